// A half-typed walk, kept on this device at every key and offered again; one window at a time may type.
(function () {
  "use strict";

  function person() {
    var shown = document.querySelector("[data-person]");
    return shown ? shown.textContent : "";
  }

  function key(stringId) {
    return person() + "/" + stringId;
  }

  function keep(stringId, draft) {
    return Device.drafts.put(Object.assign({ key: key(stringId), string: stringId, person: person(), at: Date.now() }, draft));
  }

  // holds the walk for this window; "lost" is called when another window takes it over
  function hold(stringId, steal, lost) {
    if (!navigator.locks) {
      return Promise.resolve(true);
    }
    return new Promise(function (resolve) {
      navigator.locks
        .request("ohmstead-walk-" + stringId, steal ? { steal: true } : { ifAvailable: true }, function (lock) {
          resolve(lock !== null);
          return lock === null ? null : new Promise(function () {});
        })
        .catch(lost);
    });
  }

  window.WalkDraft = {
    key: key,
    person: person,
    keep: keep,
    hold: hold,
    find: function (stringId) {
      return Device.drafts.get(key(stringId));
    },
    remove: function (stringId) {
      return Device.drafts.remove(key(stringId));
    }
  };
})();
