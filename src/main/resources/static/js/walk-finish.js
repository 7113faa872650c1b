// The end of a walk: what was read, what asks for another look, and what became of it after handing in.
(function () {
  "use strict";

  function line(text, index, goTo) {
    var item = document.createElement("li");
    var button = document.createElement("button");
    button.type = "button";
    button.className = "button small";
    button.textContent = "Go there";
    button.addEventListener("click", function () {
      goTo(index);
    });
    item.append(text + " ", button);
    return item;
  }

  function list(title, items) {
    var section = document.createElement("div");
    var head = document.createElement("h3");
    var lines = document.createElement("ul");
    head.textContent = title;
    lines.className = "walk-open";
    lines.append.apply(lines, items);
    section.append(head, lines);
    return section;
  }

  function isRead(step, typed) {
    return step.fields.every(function (field) {
      return !field.wanted || typed[field.name];
    });
  }

  function sort(steps, typed, goTo) {
    var found = { read: 0, missing: [], remake: [], look: [] };
    steps.forEach(function (step, index) {
      var answer = step.judge(typed);
      if (step.skip && isRead(step, typed)) {
        found.read++;
      } else if (step.skip) {
        found.missing.push(line(step.name + ": " + (typed[step.skip] || "not read, no reason given"), index, goTo));
      }
      if (answer && answer.weight === "remake") {
        found.remake.push(line(step.name + ": " + answer.short, index, goTo));
      } else if (answer && answer.weight !== "fine") {
        found.look.push(line(step.name + ": " + answer.short, index, goTo));
      }
    });
    return found;
  }

  window.WalkFinish = {
    summary: function (place, steps, typed, goTo) {
      var found = sort(steps, typed, goTo);
      var stops = steps.filter(function (step) {
        return step.skip;
      }).length;
      var words = document.createElement("p");
      words.textContent = found.read + " of " + stops + " stops were read, the closing reading among them if it was taken. Taken at " + typed.takenAt.replace("T", " ") + ", site time.";
      var parts = [words];
      if (found.remake.length) {
        parts.push(list("Remake and re-measure while you are here", found.remake));
      }
      if (found.look.length) {
        parts.push(list("Have another look", found.look));
      }
      if (found.missing.length) {
        parts.push(list("Not read", found.missing));
      }
      place.replaceChildren.apply(place, parts);
    },

    handed: function (place, upload) {
      var entries = document.createElement("ul");
      entries.className = "outbox";
      entries.dataset.outboxList = "";
      entries.dataset.only = upload;
      var words = document.createElement("p");
      words.textContent = "It stays here until the service's receipt has come, also when you close this window or switch the device off.";
      place.replaceChildren(words, entries);
    }
  };
})();
