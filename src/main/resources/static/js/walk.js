// A string's walk on site: begin, stop by stop, check, hand in. Kept on this device all the way; see docs/on-site.md.
(function () {
  "use strict";

  var main = document.querySelector("[data-walk]");
  if (!main || !window.OutboxView) {
    return; // without storage on the device the long form does it
  }
  var form = main.querySelector("[data-walk-form]");
  var stringId = main.dataset.walk;
  var fields = WalkForm(form);
  var stepper = WalkStepper(main.querySelector('[data-stage="stepper"]'), fields, { changed: keep, done: finish });
  var walk = null;
  var upload = crypto.randomUUID();
  var live = false;
  var saving = Promise.resolve();

  function part(name) {
    return main.querySelector("[data-walk-" + name + "]");
  }

  function stage(shown) {
    main.querySelectorAll("[data-stage]").forEach(function (section) {
      section.hidden = section.dataset.stage !== shown;
    });
    part("head").classList.toggle("visually-hidden", shown === "stepper"); // the title stays for who listens
  }

  function moment(value) {
    return new Date(value).toLocaleString("en-GB", { dateStyle: "medium", timeStyle: "short" });
  }

  function measured() {
    var chosen = {};
    main.querySelectorAll("[data-measure]").forEach(function (box) {
      chosen[box.dataset.measure] = box.checked;
    });
    return chosen;
  }

  // at every key: what is on the screen is on the disk
  function keep() {
    if (!live) {
      return;
    }
    var draft = { upload: upload, step: stepper.at(), measured: measured(), typed: fields.typed(), title: walk.title };
    saving = saving.then(function () {
      return live ? WalkDraft.keep(stringId, draft) : null;
    });
    saving.catch(function () {
      net("This device has no room left to keep the walk. Finish and hand in now.");
    });
  }

  function net(words) {
    part("net").hidden = !words;
    part("net").textContent = words;
  }

  function showNet() {
    net(navigator.onLine ? "" : "No network. What you type is kept on this device. Last values as of " + moment(walk.asOf) + ".");
  }

  // the survey's time is the site's own clock
  function siteTime(instant) {
    var parts = {};
    new Intl.DateTimeFormat("en-GB", { timeZone: walk.timeZone, year: "numeric", month: "2-digit", day: "2-digit", hour: "2-digit", minute: "2-digit", hourCycle: "h23" })
      .formatToParts(instant)
      .forEach(function (piece) {
        parts[piece.type] = piece.value;
      });
    return parts.year + "-" + parts.month + "-" + parts.day + "T" + parts.hour + ":" + parts.minute;
  }

  // the device's clock may be wrong: say so where the service can be asked
  async function setTime() {
    var here = new Date();
    fields.input("takenAt").value = siteTime(here);
    part("clock").textContent = "By this device it is now " + siteTime(here).substring(11) + " at the site.";
    var who = await Outbox.session();
    var minutes = who.now ? Math.round((Date.now() - new Date(who.now).getTime()) / 60000) : 0;
    if (Math.abs(minutes) > 3) {
      part("clock").textContent = "Look twice: this device's clock is " + Math.abs(minutes) + " minutes " + (minutes > 0 ? "ahead of" : "behind") + " the service's.";
    }
  }

  function begin(first) {
    if (!fields.input("takenAt").reportValidity()) {
      return;
    }
    live = true;
    stage("stepper");
    stepper.begin(WalkSteps.of(walk, measured(), fields.input("ohmicKind").value), first);
  }

  function resume(draft) {
    upload = draft.upload;
    Object.keys(draft.typed).forEach(function (name) {
      fields.set(name, draft.typed[name]);
    });
    main.querySelectorAll("[data-measure]").forEach(function (choice) {
      choice.checked = draft.measured[choice.dataset.measure];
    });
    part("draft").hidden = true;
    begin(draft.step);
  }

  function finish() {
    WalkFinish.summary(part("summary"), stepper.steps(), fields.typed(), function (index) {
      stage("stepper");
      stepper.go(index);
    });
    stage("finish");
    part("back-in").hidden = false;
    scrollTo(0, 0);
    keep();
  }

  async function handIn() {
    var values = fields.typed();
    var bytes = new TextEncoder().encode(WalkSheet.of(walk, values)).buffer;
    live = false;
    await saving.catch(function () {}); // the survey itself is stored next, or says why not
    var entry = { id: upload, person: WalkDraft.person(), string: stringId, title: walk.title, name: WalkSheet.fileName(walk, values), bytes: bytes };
    try {
      await Outbox.add(entry, WalkDraft.key(stringId));
    } catch (full) {
      live = true;
      net("This device could not keep the survey: " + full + ". Free some room and hand in again.");
      return;
    }
    WalkFinish.handed(part("handed"), upload);
    stage("handed");
    scrollTo(0, 0);
    OutboxView.show();
    Outbox.drain(true);
  }

  // the network's answer, else the copy taken along
  async function load() {
    var address = main.dataset.walkJson;
    var answer = await fetch(address, { credentials: "same-origin", headers: { Accept: "application/json" } }).catch(function () {
      return null;
    });
    if (answer && answer.ok) {
      return answer.json();
    }
    var kept = window.caches && (await caches.match(address, { ignoreVary: true }));
    return kept ? kept.json() : null;
  }

  async function offerDraft() {
    var draft = await WalkDraft.find(stringId);
    if (!draft) {
      return;
    }
    part("draft-words").textContent = "Last typed at " + moment(draft.at) + ", step " + (draft.step + 1) + ". Nothing of it is handed in yet.";
    part("draft").hidden = false;
    part("choice").hidden = true; // nobody writes over it by accident
    part("resume").onclick = function () {
      resume(draft);
    };
    part("anew").onclick = async function () {
      await WalkDraft.remove(stringId);
      part("draft").hidden = true;
      part("choice").hidden = false;
    };
  }

  function elsewhere() {
    live = false;
    stage("none");
    part("elsewhere").hidden = false;
  }

  async function take(steal) {
    if (!(await WalkDraft.hold(stringId, steal, elsewhere))) {
      elsewhere();
      return;
    }
    part("elsewhere").hidden = true;
    stage("start");
    await offerDraft();
  }

  function wire() {
    form.noValidate = true;
    part("begin").addEventListener("click", function () {
      begin(0);
    });
    part("take-over").addEventListener("click", function () {
      take(true);
    });
    part("back-in").addEventListener("click", function () {
      stage("stepper");
      stepper.go(stepper.at());
    });
    form.addEventListener("input", function (event) {
      if (event.target.name) {
        keep();
      }
    });
    form.addEventListener("submit", function (event) {
      event.preventDefault();
      handIn();
    });
    addEventListener("online", showNet);
    addEventListener("offline", showNet);
  }

  async function start() {
    walk = await load();
    if (!walk) {
      return; // neither network nor copy: the long form stands
    }
    part("choice").hidden = false;
    wire();
    showNet();
    await take(false);
    main.dataset.walkReady = "yes";
    await setTime();
  }

  start();
})();
