// Fetches the walks of a round, so that they open without a network, and lists what this device holds.
(function () {
  "use strict";

  if (!window.Outbox || !window.OutboxView || !window.caches) {
    return;
  }
  var places = Array.from(document.querySelectorAll("[data-take]"));
  var says = document.querySelector("[data-take-says]");

  async function fetched(cache, address) {
    var answer = await fetch(address, { credentials: "same-origin", cache: "reload" });
    if (!answer.ok || answer.redirected) {
      throw new Error("not there");
    }
    await cache.put(new URL(address, location.href).href, answer);
  }

  async function take(place) {
    place.textContent = "fetching";
    try {
      var cache = await caches.open("walks");
      await Promise.all([fetched(cache, place.dataset.take), fetched(cache, place.dataset.takeJson)]);
      place.textContent = "on this device";
      return true;
    } catch (failed) {
      place.textContent = "not fetched";
      return false;
    }
  }

  async function takeAll(button) {
    button.disabled = true;
    var done = 0;
    for (var i = 0; i < places.length; i++) {
      done += (await take(places[i])) ? 1 : 0;
      says.textContent = done + " of " + places.length + " on this device";
    }
    await fetched(await caches.open("walks"), Outbox.base() + "on-site").catch(function () {
      done = -1;
    });
    says.textContent = done === places.length
      ? "All " + done + " are on this device and open without a network."
      : "Not everything could be fetched. Look at the network and take the round along again.";
    button.disabled = false;
    await listHeld();
  }

  async function heldWalks() {
    var cache = await caches.open("walks");
    var held = [];
    for (var request of await cache.keys()) {
      if (new URL(request.url).pathname.indexOf("/api/") >= 0) {
        held.push(await (await cache.match(request)).json());
      }
    }
    return held.sort(function (a, b) {
      return a.title < b.title ? -1 : 1;
    });
  }

  function line(walk, draft) {
    var item = document.createElement("li");
    var what = document.createElement("div");
    var link = document.createElement("a");
    var why = document.createElement("div");
    item.className = "no-disc";
    link.className = "what";
    link.href = Outbox.base() + "strings/" + walk.stringId + "/walk";
    link.textContent = walk.title;
    why.className = "why";
    why.textContent = walk.siteName + ", " + walk.positions + " jars; values as of " + new Date(walk.asOf).toLocaleString("en-GB", { dateStyle: "medium", timeStyle: "short" }) + (draft ? "; begun, step " + (draft.step + 1) : "");
    what.append(link, why);
    item.append(what);
    return item;
  }

  async function listHeld() {
    var person = document.querySelector("[data-person]");
    var drafts = (await Device.drafts.all()).filter(function (draft) {
      return person && draft.person === person.textContent;
    });
    var held = await heldWalks();
    var list = document.querySelector("[data-device-walks]");
    list.replaceChildren.apply(list, held.map(function (walk) {
      return line(walk, drafts.find(function (draft) {
        return draft.string === String(walk.stringId);
      }));
    }));
    document.querySelector("[data-device-empty]").hidden = held.length > 0;
  }

  var all = document.querySelector("[data-take-all]");
  if (all) {
    all.hidden = false;
    all.addEventListener("click", function () {
      takeAll(all);
    });
  }
  listHeld();
})();
