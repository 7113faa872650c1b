// Runs before the first paint: a stored choice of theme wins over the system's.
(function () {
  var stored = null;
  try {
    stored = localStorage.getItem("theme");
  } catch (refused) {
    stored = null; // storage switched off: follow the system
  }
  if (stored === "light" || stored === "dark") {
    document.documentElement.dataset.theme = stored;
  }
})();
