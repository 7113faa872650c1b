// Small comforts; every page works without them.
(function () {
  "use strict";

  function dark() {
    var chosen = document.documentElement.dataset.theme;
    return chosen ? chosen === "dark" : matchMedia("(prefers-color-scheme: dark)").matches;
  }

  function showTheme(button) {
    button.hidden = false;
    button.textContent = dark() ? "Use the light theme" : "Use the dark theme";
  }

  document.querySelectorAll("[data-theme-toggle]").forEach(function (button) {
    showTheme(button);
    button.addEventListener("click", function () {
      var next = dark() ? "light" : "dark";
      document.documentElement.dataset.theme = next;
      try {
        localStorage.setItem("theme", next);
      } catch (refused) {
        // storage switched off: the choice holds for this page
      }
      showTheme(button);
    });
  });

  // the key "/" goes to the find box, as its hint says
  document.addEventListener("keydown", function (event) {
    var typing = event.target.closest("input, textarea, select, [contenteditable]");
    if (event.key !== "/" || typing || event.ctrlKey || event.metaKey || event.altKey) {
      return;
    }
    var box = Array.from(document.querySelectorAll("[data-find]")).find(function (candidate) {
      return candidate.offsetParent !== null;
    });
    if (box) {
      event.preventDefault();
      box.focus();
      box.select();
    }
  });

  // one open menu at a time; Escape and a click elsewhere close it
  var menus = document.querySelectorAll("details.menu");
  document.addEventListener("click", function (event) {
    menus.forEach(function (menu) {
      if (!menu.contains(event.target)) {
        menu.open = false;
      }
    });
  });
  document.addEventListener("keydown", function (event) {
    if (event.key !== "Escape") {
      return;
    }
    menus.forEach(function (menu) {
      if (menu.open) {
        menu.open = false;
        menu.querySelector("summary").focus();
      }
    });
  });

  // what prints is read whole: open every table that is folded away, and fold it again after
  var opened = [];
  addEventListener("beforeprint", function () {
    opened = Array.from(document.querySelectorAll("details.disclosure:not([open])"));
    opened.forEach(function (details) {
      details.open = true;
    });
  });
  addEventListener("afterprint", function () {
    opened.forEach(function (details) {
      details.open = false;
    });
  });

  // files dropped anywhere on a drop place land in its file input
  document.querySelectorAll("[data-drop]").forEach(function (place) {
    var input = place.querySelector('input[type="file"]');
    ["dragenter", "dragover"].forEach(function (name) {
      place.addEventListener(name, function (event) {
        event.preventDefault();
        place.classList.add("over");
      });
    });
    ["dragleave", "drop"].forEach(function (name) {
      place.addEventListener(name, function (event) {
        event.preventDefault();
        place.classList.remove("over");
      });
    });
    place.addEventListener("drop", function (event) {
      input.files = event.dataTransfer.files;
      input.dispatchEvent(new Event("change", { bubbles: true }));
    });
  });
})();
