// The fields of the long form, which hold what the stepper shows.
(function () {
  "use strict";

  window.WalkForm = function (form) {
    function hidden(name) {
      var made = document.createElement("input");
      made.type = "hidden";
      made.name = name;
      form.append(made);
      return made;
    }

    function input(name) {
      return form.querySelector('[name="' + name + '"]:not([type="radio"])') || hidden(name);
    }

    // what is typed, by field; empty ones are left out
    function typed() {
      var values = {};
      new FormData(form).forEach(function (value, name) {
        if (value !== "" && name !== "_csrf" && name !== "ticket") {
          values[name] = value;
        }
      });
      return values;
    }

    function set(name, value) {
      var radio = Array.from(form.querySelectorAll('[type="radio"][name="' + name + '"]')).find(function (choice) {
        return choice.value === value;
      });
      if (radio) {
        radio.checked = true;
      } else {
        input(name).value = value;
      }
    }

    return { input: input, typed: typed, set: set };
  };
})();
