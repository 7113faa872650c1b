// What is to be handed in stays on this device until the service's receipt is here. Runs in pages and in the service worker.
(function (scope) {
  "use strict";

  var inStore = scope.Device.inStore;
  var CHANNEL = "ohmstead-outbox";
  var LOCK = "ohmstead-outbox";
  var FINAL = [400, 404, 405, 409, 413, 422];
  var PATIENCE = 120000;
  var KEPT = 50;
  var listeners = [];
  var channel = "BroadcastChannel" in scope ? new BroadcastChannel(CHANNEL) : null;
  var timer = null;

  function base() {
    return scope.registration ? new URL(scope.registration.scope).pathname : document.body.dataset.base || "/";
  }

  async function all() {
    var entries = await inStore("readonly", function (outbox) {
      return outbox.getAll();
    });
    return entries.sort(function (a, b) {
      return b.at - a.at;
    });
  }

  function get(id) {
    return inStore("readonly", function (outbox) {
      return outbox.get(id);
    });
  }

  async function save(entry) {
    await inStore("readwrite", function (outbox) {
      return outbox.put(entry);
    });
    announce(entry.id);
  }

  function announce(id, progress) {
    var news = { id: id, progress: progress };
    if (channel) {
      channel.postMessage(news);
    }
    tell(news);
  }

  function tell(news) {
    listeners.forEach(function (listener) {
      listener(news);
    });
  }

  if (channel) {
    channel.onmessage = function (event) {
      tell(event.data);
    };
  }

  async function fingerprint(bytes) {
    var digest = await crypto.subtle.digest("SHA-256", bytes);
    return Array.from(new Uint8Array(digest), function (byte) {
      return byte.toString(16).padStart(2, "0");
    }).join("");
  }

  // the draft goes in the same transaction, so that a survey is either still typed or already in the outbox
  async function add(entry, draftKey) {
    var complete = Object.assign({ state: "waiting", why: "", at: Date.now(), attempts: 0, nextAt: 0 }, entry);
    complete.sha256 = await fingerprint(entry.bytes);
    await inStore("readwrite", function (outbox, drafts) {
      var known = outbox.get(entry.id);
      known.onsuccess = function () {
        if (!known.result) {
          outbox.add(complete);
        }
        if (draftKey) {
          drafts.delete(draftKey);
        }
      };
      return known;
    });
    announce(entry.id);
    if (scope.navigator.storage && scope.navigator.storage.persist && scope.document) {
      scope.navigator.storage.persist();
    }
  }

  // who is signed in, with a form token that is fresh: the page may be days old
  async function session() {
    try {
      var answer = await fetch(base() + "api/session", { cache: "no-store", credentials: "same-origin", headers: { Accept: "application/json" } });
      if (answer.status === 401) {
        return { out: true };
      }
      return answer.ok ? await answer.json() : { away: true };
    } catch (unreachable) {
      return { away: true };
    }
  }

  function address(entry) {
    var query = "?file=" + encodeURIComponent(entry.name) + (entry.string ? "&string=" + entry.string : "");
    if (entry.supersedes) {
      query += "&supersedes=" + entry.supersedes + "&reason=" + encodeURIComponent(entry.reason);
    }
    return base() + "api/uploads/" + entry.id + query;
  }

  // resolves with status and text; rejects when the network failed
  function put(entry, who) {
    return scope.XMLHttpRequest ? putWithProgress(entry, who) : putPlainly(entry, who);
  }

  async function putPlainly(entry, who) {
    var headers = { "Content-Type": "application/octet-stream" };
    headers[who.header] = who.token;
    var answer = await fetch(address(entry), { method: "PUT", headers: headers, body: entry.bytes, credentials: "same-origin" });
    return { status: answer.status, text: await answer.text() };
  }

  function putWithProgress(entry, who) {
    return new Promise(function (resolve, reject) {
      var request = new XMLHttpRequest();
      request.open("PUT", address(entry));
      request.timeout = PATIENCE;
      request.setRequestHeader("Content-Type", "application/octet-stream");
      request.setRequestHeader(who.header, who.token);
      request.upload.onprogress = function (event) {
        announce(entry.id, event.lengthComputable ? event.loaded / event.total : 0);
      };
      request.onload = function () {
        resolve({ status: request.status, text: request.responseText });
      };
      request.onerror = request.ontimeout = function () {
        reject(new Error("no answer"));
      };
      request.send(entry.bytes);
    });
  }

  function parsed(text) {
    try {
      return JSON.parse(text);
    } catch (notJson) {
      return {};
    }
  }

  function later(entry, why) {
    var attempts = entry.attempts + 1;
    var wait = Math.min(300000, 5000 * Math.pow(2, attempts - 1));
    return save(Object.assign(entry, { state: "waiting", why: why, attempts: attempts, nextAt: Date.now() + wait }));
  }

  // a file of several surveys has a receipt for each; the gravest outcome is the file's
  function parts(receipt) {
    return receipt.parts && receipt.parts.length ? receipt.parts : [receipt];
  }

  function outcome(receipt) {
    var states = parts(receipt).map(function (part) {
      return part.state;
    });
    return states.indexOf("HELD") >= 0 ? "held" : states.indexOf("REFUSED") >= 0 ? "refused" : "handed";
  }

  function taken(entry, receipt) {
    if (receipt.sha256 !== entry.sha256) {
      return later(entry, "The answer was no receipt for this file; it is sent again.");
    }
    var state = outcome(receipt);
    var made = parts(receipt).flatMap(function (part) {
      return part.remarks;
    });
    var remarks = made.slice(0, 30).map(function (remark) {
      return { severity: remark.severity, place: remark.place, message: remark.message, remedy: remark.remedy };
    });
    var several = parts(receipt).length > 1 ? parts(receipt).length + " surveys" : null;
    var kept = { string: receipt.string || several, surveyId: receipt.surveyId, jars: receipt.jars, links: receipt.links, at: receipt.receivedAt, remarks: remarks };
    return save(Object.assign(entry, { state: state, why: "", receipt: kept, bytes: null }));
  }

  async function send(entry, who) {
    await save(Object.assign(entry, { state: "sending", why: "" }));
    var answer;
    try {
      answer = await put(entry, who);
    } catch (failed) {
      await later(entry, "The network failed on the way; it is sent again.");
      return true;
    }
    var said = parsed(answer.text);
    if (answer.status === 200 || answer.status === 201) {
      await taken(entry, said);
    } else if (answer.status === 401) {
      await save(Object.assign(entry, { state: "signed-out", why: "Your sign-in has expired." }));
      return false;
    } else if (FINAL.indexOf(answer.status) >= 0 || answer.status === 403) {
      await save(Object.assign(entry, { state: "stuck", why: said.detail || "The service does not take it (" + answer.status + ")." }));
    } else {
      await later(entry, "The service has trouble (" + answer.status + "); it is sent again.");
    }
    return true;
  }

  function due(entries, hurry) {
    return entries.filter(function (entry) {
      var open = ["waiting", "sending", "signed-out"].indexOf(entry.state) >= 0;
      return open && (hurry || entry.nextAt <= Date.now());
    });
  }

  async function sendDue(hurry) {
    var entries = due(await all(), hurry).reverse();
    if (entries.length === 0) {
      return;
    }
    var who = await session();
    for (var i = 0; i < entries.length; i++) {
      if (who.away) {
        await later(entries[i], "No network yet.");
      } else if (who.out) {
        await save(Object.assign(entries[i], { state: "signed-out", why: "Your sign-in has expired.", nextAt: Date.now() + 30000 }));
      } else if (entries[i].person && entries[i].person !== who.username) {
        await save(Object.assign(entries[i], { state: "signed-out", why: "It is sent when " + entries[i].person + " signs in here.", nextAt: Date.now() + 30000 }));
      } else if (!(await send(entries[i], who))) {
        return;
      }
    }
    await forgetOld();
  }

  // only what has its receipt is ever forgotten
  async function forgetOld() {
    var done = (await all()).filter(function (entry) {
      return entry.receipt;
    });
    await inStore("readwrite", function (outbox) {
      done.slice(KEPT).forEach(function (entry) {
        outbox.delete(entry.id);
      });
    });
  }

  // one sender at a time over all windows and the worker; the service's own memory of names is the second net
  async function drain(hurry) {
    if (scope.navigator.locks) {
      await scope.navigator.locks.request(LOCK, function () {
        return sendDue(hurry);
      });
    } else {
      await sendDue(hurry);
    }
    await again();
  }

  async function again() {
    if (!scope.document) {
      return;
    }
    clearTimeout(timer);
    var next = due(await all(), true).reduce(function (soonest, entry) {
      return Math.min(soonest, entry.nextAt);
    }, Infinity);
    if (next < Infinity) {
      timer = setTimeout(drain, Math.max(1000, next - Date.now()));
    }
  }

  async function retry(id) {
    var entry = await get(id);
    if (entry && !entry.receipt) {
      await save(Object.assign(entry, { state: "waiting", why: "", nextAt: 0 }));
    }
    await drain(true);
  }

  scope.Outbox = {
    add: add,
    all: all,
    get: get,
    drain: drain,
    retry: retry,
    base: base,
    session: session,
    listen: function (listener) {
      listeners.push(listener);
    }
  };
})(self);
