// One stop of the walk at a time, with big keys. What is typed goes into the long form's fields.
(function () {
  "use strict";

  function named(tag, className, text) {
    var made = document.createElement(tag);
    made.className = className;
    made.textContent = text;
    return made;
  }

  // on: {changed, done} are called at every key and when the last stop is left
  window.WalkStepper = function (section, fields, on) {
    var steps = [];
    var at = 0;
    var active = 0;
    var confirmed = false;

    function part(name) {
      return section.querySelector("[data-step-" + name + "]");
    }

    function box() {
      return section.querySelector('[data-step-input="' + active + '"]');
    }

    function answer() {
      return steps[at].judge(fields.typed());
    }

    function isLastField() {
      return active === steps[at].fields.length - 1;
    }

    function doneWords(step) {
      var values = fields.typed();
      var read = step.fields
        .filter(function (item) {
          return values[item.name];
        })
        .map(function (item) {
          return values[item.name] + "\u00a0" + item.unit;
        });
      var skipped = step.skip && values[step.skip];
      return "Done: " + step.name + "  " + (read.join("  ") || (skipped ? "not read, " + skipped : "nothing typed"));
    }

    function fieldRow(item, index) {
      var row = named("label", "step-field" + (index === active ? " active" : ""), "");
      var shown = document.createElement("input");
      shown.value = fields.input(item.name).value;
      shown.inputMode = "decimal";
      shown.autocomplete = "off";
      shown.dataset.stepInput = index;
      shown.addEventListener("focus", function () {
        active = index;
        mark();
      });
      shown.addEventListener("input", function () {
        type(shown.value);
      });
      var last = item.last === null || item.last === undefined ? "" : "last time " + item.last;
      row.append(named("span", "step-label", item.label), shown, named("span", "unit", item.unit), named("span", "step-last", last));
      return row;
    }

    function draw() {
      var step = steps[at];
      part("bar").value = at / (steps.length - 1);
      part("count").textContent = "Step " + (at + 1) + " of " + steps.length + " · positive end first";
      part("title").textContent = step.title;
      part("hint").textContent = step.hint;
      part("asks").hidden = !step.asks;
      part("asks").textContent = step.asks || "";
      part("done").textContent = at > 0 ? doneWords(steps[at - 1]) : "";
      part("skip").hidden = true;
      part("not").hidden = !step.skip;
      part("back").disabled = at === 0;
      part("fields").replaceChildren.apply(part("fields"), step.fields.map(fieldRow));
      say(answer());
    }

    function say(said) {
      part("says").className = "step-says" + (said ? " says-" + said.weight : "");
      part("says").textContent = said ? said.words : "";
      part("remade").hidden = !(said && said.weight === "remake");
      nextWords(said);
    }

    function nextWords(said) {
      var following = isLastField() ? (at + 1 < steps.length ? steps[at + 1].name : "check and hand in") : steps[at].fields[active + 1].label.toLowerCase();
      var keep = isLastField() && said && said.weight === "grave" && !confirmed;
      part("next").textContent = keep ? "Keep it all the same?" : "Next: " + following;
    }

    function mark() {
      section.querySelectorAll(".step-field").forEach(function (row, index) {
        row.classList.toggle("active", index === active);
      });
      nextWords(answer());
    }

    function type(text) {
      var clean = text.replace(/[^\d.,+−-]/g, "").substring(0, 12);
      fields.input(steps[at].fields[active].name).value = clean;
      if (box().value !== clean) {
        box().value = clean;
      }
      if (clean && steps[at].skip) {
        fields.set(steps[at].skip, "");
      }
      confirmed = false;
      say(answer());
      on.changed();
    }

    function press(key) {
      var text = box().value;
      if (key === "erase") {
        type(text.slice(0, -1));
      } else if (key !== "." || text.search(/[.,]/) < 0) {
        type(text + key);
      }
    }

    // a touch screen keeps its own keyboard away: the keys below do it
    function focus() {
      if (matchMedia("(pointer: coarse)").matches) {
        part("title").focus({ preventScroll: true });
      } else {
        box().focus({ preventScroll: true });
      }
    }

    function go(to) {
      at = Math.max(0, Math.min(steps.length - 1, to));
      active = 0;
      confirmed = false;
      draw();
      on.changed();
      scrollTo(0, 0);
      focus();
    }

    function isMissing() {
      var values = fields.typed();
      var step = steps[at];
      var empty = step.fields.some(function (item) {
        return item.wanted && !values[item.name];
      });
      return empty && !(step.skip && values[step.skip]);
    }

    function leave() {
      if (at === steps.length - 1) {
        on.done();
      } else {
        go(at + 1);
      }
    }

    function next() {
      var said = answer();
      if (!isLastField()) {
        active++;
        mark();
        focus();
      } else if (isMissing()) {
        say({ weight: "look", words: "Something is not typed yet. Type it, or press Skip and say why." });
      } else if (said && said.weight === "grave" && !confirmed) {
        confirmed = true;
        part("next").textContent = "Yes, keep it";
      } else {
        leave();
      }
    }

    function clear(step) {
      step.fields.forEach(function (item) {
        fields.input(item.name).value = "";
      });
    }

    function askWhy() {
      var step = steps[at];
      var buttons = step.reasons.map(function (reason) {
        var button = named("button", "button", reason);
        button.type = "button";
        button.addEventListener("click", function () {
          clear(step);
          fields.set(step.skip, reason);
          leave();
        });
        return button;
      });
      part("skip").replaceChildren.apply(part("skip"), [named("p", "", "Not read, because:")].concat(buttons));
      part("skip").hidden = false;
      part("skip").scrollIntoView({ block: "nearest" });
      buttons[0].focus();
    }

    // the reading before the remake goes into the note, the new one into the survey
    function remade() {
      var step = steps[at];
      var values = fields.typed();
      fields.input(step.remade).value = step.fields
        .map(function (item) {
          return WalkSheet.number(values, item.name);
        })
        .join(" / ");
      clear(step);
      go(at);
    }

    function onKeyboard(event) {
      if (section.hidden || event.ctrlKey || event.metaKey || event.altKey) {
        return;
      }
      var inField = event.target.closest("input, textarea, select");
      if (event.key === "Enter" && !event.target.closest("button, a")) {
        event.preventDefault();
        next();
      } else if (!inField && /^[\d.,]$/.test(event.key)) {
        press(event.key);
      } else if (!inField && event.key === "Backspace") {
        press("erase");
      }
    }

    part("next").addEventListener("click", next);
    part("not").addEventListener("click", askWhy);
    part("remade-now").addEventListener("click", remade);
    part("back").addEventListener("click", function () {
      go(at - 1);
    });
    part("end").addEventListener("click", function () {
      go(steps.length - 1);
    });
    part("keys").addEventListener("click", function (event) {
      var key = event.target.closest("[data-key]");
      if (key) {
        press(key.dataset.key);
      }
    });
    document.addEventListener("keydown", onKeyboard);

    return {
      begin: function (walked, first) {
        steps = walked;
        go(first);
      },
      go: go,
      at: function () {
        return at;
      },
      steps: function () {
        return steps;
      }
    };
  };
})();
