// Puts files into this device's outbox, which hands them in with their progress, now or when there is a network again;
// without this script, or without storage on the device, the plain form does it.
(function () {
  "use strict";

  function person() {
    var shown = document.querySelector("[data-person]");
    return shown ? shown.textContent : "";
  }

  function value(form, name) {
    var field = form.querySelector('[name="' + name + '"]');
    return field ? field.value : "";
  }

  // one name per file for as long as it is in the outbox: a retry is the same upload
  async function keep(form, file) {
    var entry = { id: crypto.randomUUID(), person: person(), string: value(form, "string"), title: file.name, name: file.name };
    entry.supersedes = value(form, "supersedes");
    entry.reason = value(form, "reason");
    entry.bytes = await file.arrayBuffer();
    await Outbox.add(entry);
    return entry.id;
  }

  // on the device's own page everything is listed anyway
  function shower(list) {
    var shown = [];
    return function (ids) {
      if (list.dataset.outboxList === undefined) {
        return OutboxView.show();
      }
      shown = ids.concat(shown);
      list.dataset.only = shown.join(" ") || "none";
      list.hidden = shown.length === 0;
      OutboxView.show();
    };
  }

  async function take(form, files, show, says) {
    for (var i = 0; i < files.length; i++) {
      try {
        show([await keep(form, files[i])]);
      } catch (failed) {
        says.hidden = false;
        says.textContent = files[i].name + " could not be read or kept on this device (" + failed + "). Choose it again, or hand it in with the network there.";
      }
    }
    Outbox.drain(true);
  }

  async function open() {
    return (await Outbox.all())
      .filter(function (entry) {
        return !entry.receipt;
      })
      .map(function (entry) {
        return entry.id;
      });
  }

  function wire(form) {
    var input = form.querySelector('input[type="file"]');
    var show = shower(form.querySelector("[data-progress]"));
    form.addEventListener("submit", function (event) {
      event.preventDefault();
      var says = form.querySelector("[data-hand-in-says]");
      says.hidden = true;
      take(form, Array.from(input.files), show, says);
      input.value = "";
    });
    if (!form.querySelector('[name="supersedes"]')) {
      open().then(show, function () {}); // what an earlier visit left; a browser that keeps nothing has none
    }
  }

  if (window.OutboxView) {
    document.querySelectorAll("[data-hand-in]").forEach(wire);
  }
})();
