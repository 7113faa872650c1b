// What this device keeps in its own database: the outbox, and walks half typed. Runs in pages and in the service worker.
(function (scope) {
  "use strict";

  var NAME = "ohmstead";

  function open() {
    return new Promise(function (resolve, reject) {
      var asked = indexedDB.open(NAME, 1);
      asked.onupgradeneeded = function () {
        asked.result.createObjectStore("outbox", { keyPath: "id" });
        asked.result.createObjectStore("drafts", { keyPath: "key" });
      };
      asked.onsuccess = function () {
        resolve(asked.result);
      };
      asked.onerror = function () {
        reject(asked.error);
      };
    });
  }

  // one transaction over both stores; resolves with the work's last request when everything is on disk
  async function inStore(mode, work) {
    var database = await open();
    return new Promise(function (resolve, reject) {
      var transaction = database.transaction(["outbox", "drafts"], mode, mode === "readwrite" ? { durability: "strict" } : {});
      var request = work(transaction.objectStore("outbox"), transaction.objectStore("drafts"));
      transaction.oncomplete = function () {
        database.close();
        resolve(request && request.result);
      };
      transaction.onabort = function () {
        database.close();
        reject(transaction.error);
      };
    });
  }

  scope.Device = {
    inStore: inStore,
    drafts: {
      get: function (key) {
        return inStore("readonly", function (outbox, drafts) {
          return drafts.get(key);
        });
      },
      all: function () {
        return inStore("readonly", function (outbox, drafts) {
          return drafts.getAll();
        });
      },
      put: function (draft) {
        return inStore("readwrite", function (outbox, drafts) {
          return drafts.put(draft);
        });
      },
      remove: function (key) {
        return inStore("readwrite", function (outbox, drafts) {
          return drafts.delete(key);
        });
      }
    }
  };
})(self);
