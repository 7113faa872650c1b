// Shows on every page what waits on this device, and sees to it that it is sent.
(function () {
  "use strict";

  if (!window.isSecureContext || !window.indexedDB || !window.crypto || !crypto.subtle) {
    return; // an insecure address: forms work, but nothing can be kept here
  }
  var WORDS = {
    waiting: "waiting",
    sending: "on its way",
    handed: "handed in",
    held: "handed in, held",
    refused: "handed in, refused",
    "signed-out": "waits for a sign-in",
    stuck: "not taken"
  };
  var progress = {};

  function element(name, className, text) {
    var made = document.createElement(name);
    made.className = className || "";
    made.textContent = text || "";
    return made;
  }

  function moment(value) {
    return new Intl.DateTimeFormat("en-GB", { dateStyle: "medium", timeStyle: "short" }).format(new Date(value));
  }

  // what became of an entry, in words
  function says(entry) {
    if (!entry.receipt) {
      var next = entry.state === "waiting" && entry.attempts > 0 ? " Tried " + entry.attempts + " times; it goes on by itself." : "";
      return (entry.why || (entry.state === "sending" ? "The receipt is not here yet." : "It is sent by itself as soon as there is a network.")) + next;
    }
    var got = entry.receipt;
    var stored = got.surveyId ? "survey " + got.surveyId + ", " + got.jars + " jars and " + got.links + " link readings stored, " : "";
    return (got.string || "String not known") + ": " + stored + "received " + moment(got.at) + ".";
  }

  function remarks(entry) {
    var list = element("ul", "outbox-remarks");
    entry.receipt.remarks
      .filter(function (remark) {
        return remark.severity !== "NOTE";
      })
      .forEach(function (remark) {
        var item = element("li");
        item.append(element("strong", "", remark.place + ": "), remark.message + " ", element("span", "remedy", remark.remedy));
        list.append(item);
      });
    return list;
  }

  function bar(entry) {
    var shown = element("progress");
    shown.max = 1;
    shown.setAttribute("aria-label", "Progress of " + entry.name);
    if (progress[entry.id] !== undefined) {
      shown.value = progress[entry.id];
    }
    return shown;
  }

  function action(words, act) {
    var button = element("button", "button small", words);
    button.type = "button";
    button.addEventListener("click", act);
    return button;
  }

  function saveAsFile(entry) {
    var link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([entry.bytes], { type: "application/octet-stream" }));
    link.download = entry.name;
    link.click();
    setTimeout(function () {
      URL.revokeObjectURL(link.href);
    }, 10000);
  }

  function actions(entry) {
    var row = element("div", "buttons");
    if (entry.receipt) {
      var receipt = element("a", "button small", "The receipt");
      receipt.href = Outbox.base() + "intake/" + entry.id;
      row.append(receipt);
      return row;
    }
    if (entry.state === "signed-out") {
      var door = element("a", "button small primary", "Sign in");
      door.href = Outbox.base() + "sign-in";
      row.append(door);
    }
    if (entry.state !== "sending") {
      row.append(action("Try now", function () {
        Outbox.retry(entry.id);
      }));
    }
    row.append(action("Save as a file", function () {
      saveAsFile(entry);
    }));
    return row;
  }

  function card(entry) {
    var item = element("li", "outbox-entry outbox-" + entry.state);
    item.dataset.state = entry.state;
    item.dataset.upload = entry.id;
    var head = element("p", "outbox-head");
    head.append(element("strong", "", entry.title || entry.name), " ", element("span", "state" + (entry.state === "held" ? " state-held" : ""), WORDS[entry.state]));
    item.append(head, element("p", "quiet", says(entry)));
    if (entry.state === "sending") {
      item.append(bar(entry));
    }
    if (entry.receipt) {
      item.append(remarks(entry));
    }
    item.append(actions(entry));
    return item;
  }

  async function show() {
    var entries;
    try {
      entries = await Outbox.all();
    } catch (refused) {
      return; // the browser keeps nothing for this address: there is nothing to show
    }
    var open = entries.filter(function (entry) {
      return !entry.receipt;
    }).length;
    document.querySelectorAll("[data-outbox-badge]").forEach(function (badge) {
      badge.hidden = open === 0;
      badge.textContent = open + " waiting";
    });
    document.querySelectorAll("[data-outbox-list]").forEach(function (list) {
      var wanted = entries.filter(function (entry) {
        return !list.dataset.only || list.dataset.only.split(" ").indexOf(entry.id) >= 0;
      });
      list.replaceChildren.apply(list, wanted.map(card));
      var empty = list.parentElement.querySelector("[data-outbox-empty]");
      if (empty) {
        empty.hidden = wanted.length > 0;
      }
    });
  }

  async function register() {
    var wanted = document.querySelector("[data-person]") && document.querySelector("[data-walk], [data-outbox-list]");
    if (!navigator.serviceWorker || !wanted) {
      return; // only who works on site takes the shell along
    }
    var registration = await navigator.serviceWorker.register(Outbox.base() + "service-worker.js", { scope: Outbox.base(), updateViaCache: "none" });
    if (registration.sync) {
      registration.sync.register("outbox").catch(function () {}); // not allowed here: pages send as well
    }
  }

  // what another person may have left to be seen without a network goes with the sign-out; what is not handed in stays
  async function forgetWhenAnotherCame() {
    var person = document.querySelector("[data-person]");
    var name = person && person.textContent;
    if (name && localStorage.getItem("walks-of") !== name) {
      await caches.delete("walks");
      localStorage.setItem("walks-of", name);
    }
  }

  document.querySelectorAll("[data-sign-out]").forEach(function (form) {
    form.addEventListener("submit", function (event) {
      event.preventDefault();
      localStorage.removeItem("walks-of");
      caches.delete("walks").finally(function () {
        form.submit();
      });
    });
  });

  Outbox.listen(function (news) {
    if (news.progress === undefined) {
      delete progress[news.id];
      show();
      return;
    }
    progress[news.id] = news.progress;
    document.querySelectorAll('[data-upload="' + news.id + '"] progress').forEach(function (shown) {
      shown.value = news.progress;
    });
  });
  addEventListener("online", function () {
    Outbox.drain(true);
  });
  document.addEventListener("visibilitychange", function () {
    if (!document.hidden) {
      show();
      Outbox.drain(false);
    }
  });
  window.OutboxView = { show: show, register: register };
  show();
  forgetWhenAnotherCame().finally(function () {
    register();
    Outbox.drain(true);
  });
})();
