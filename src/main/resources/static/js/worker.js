// The service worker: the shell and the walks that were opened stay usable without a network. See docs/on-site.md.
(function () {
  "use strict";

  var BASE = new URL(self.registration.scope).pathname;
  var SHELL = "shell-" + self.SHELL_VERSION;
  var WALKS = "walks";
  var SLOW = 8000;
  var assets = new Set(self.SHELL_ASSETS);
  importScripts(BASE + "js/device.js", BASE + "js/outbox.js");

  self.addEventListener("install", function (event) {
    event.waitUntil(
      caches
        .open(SHELL)
        .then(function (cache) {
          return cache.addAll(self.SHELL_ASSETS);
        })
        .then(function () {
          return self.skipWaiting();
        })
    );
  });

  self.addEventListener("activate", function (event) {
    event.waitUntil(
      caches
        .keys()
        .then(function (names) {
          return Promise.all(
            names
              .filter(function (name) {
                return name.startsWith("shell-") && name !== SHELL;
              })
              .map(function (name) {
                return caches.delete(name);
              })
          );
        })
        .then(function () {
          return self.clients.claim();
        })
    );
  });

  function isWalk(path) {
    return /^(api\/)?strings\/\d+\/walk$/.test(path) || path === "on-site";
  }

  async function fromShell(request) {
    var cached = await caches.match(request, { cacheName: SHELL, ignoreVary: true });
    return cached || fetch(request);
  }

  // only a page of the signed-in person's own is kept: nothing that was redirected to the door
  async function remember(request, response) {
    if (response.ok && !response.redirected && response.type === "basic") {
      var cache = await caches.open(WALKS);
      await cache.put(request.url, response.clone());
    }
    return response;
  }

  function kept(request) {
    return caches.match(request.url, { cacheName: WALKS, ignoreVary: true });
  }

  function slowly() {
    return new Promise(function (resolve) {
      setTimeout(resolve, SLOW);
    });
  }

  async function fresh(event) {
    var asked = fetch(event.request).then(function (response) {
      return remember(event.request, response);
    });
    event.waitUntil(asked.catch(function () {}));
    try {
      return (await Promise.race([asked, slowly()])) || (await kept(event.request)) || (await asked);
    } catch (unreachable) {
      return (await kept(event.request)) || elsewhere(event.request, unreachable);
    }
  }

  async function elsewhere(request, unreachable) {
    var device = request.mode === "navigate" && (await caches.match(BASE + "on-site", { cacheName: WALKS, ignoreVary: true, ignoreSearch: true }));
    if (device) {
      return device;
    }
    throw unreachable;
  }

  self.addEventListener("fetch", function (event) {
    var url = new URL(event.request.url);
    if (url.origin !== self.location.origin || !url.pathname.startsWith(BASE)) {
      return;
    }
    var path = url.pathname.substring(BASE.length);
    if (event.request.method === "POST" && path === "sign-out") {
      event.waitUntil(caches.delete(WALKS));
    }
    if (event.request.method !== "GET") {
      return;
    }
    if (assets.has(url.pathname)) {
      event.respondWith(fromShell(event.request));
    } else if (isWalk(path)) {
      event.respondWith(fresh(event));
    } else if (event.request.mode === "navigate") {
      event.respondWith(
        fetch(event.request).catch(function (unreachable) {
          return elsewhere(event.request, unreachable);
        })
      );
    }
  });

  self.addEventListener("sync", function (event) {
    if (event.tag === "outbox") {
      event.waitUntil(self.Outbox.drain(true));
    }
  });
})();
