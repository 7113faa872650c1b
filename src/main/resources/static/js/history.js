// Sends a history as it is, without the limit of a form's file, and shows how far it is; without this script the form does it.
(function () {
  "use strict";

  var form = document.querySelector("[data-history]");
  if (!form) {
    return;
  }

  function say(text) {
    var state = form.querySelector("[data-history-state]");
    state.hidden = false;
    state.textContent = text;
  }

  form.addEventListener("submit", function (event) {
    var file = form.querySelector("input[type=file]").files[0];
    if (!file) {
      return;
    }
    event.preventDefault();
    var button = form.querySelector("button");
    var request = new XMLHttpRequest();
    button.disabled = true;
    request.open("POST", form.dataset.post + "?file=" + encodeURIComponent(file.name));
    request.setRequestHeader("Content-Type", "application/octet-stream");
    request.setRequestHeader("X-CSRF-TOKEN", form.querySelector('[name="_csrf"]').value);
    request.upload.addEventListener("progress", function (sent) {
      var share = sent.lengthComputable ? Math.floor((100 * sent.loaded) / sent.total) : 0;
      say(share < 100 ? share + " % sent" : "Sent; its files are being unpacked and kept");
    });
    request.addEventListener("load", function () {
      var answer = {};
      try {
        answer = JSON.parse(request.responseText);
      } catch (notJson) {
        answer = { detail: "The service answered " + request.status + "; nothing was kept." };
      }
      if (request.status === 200 || request.status === 201) {
        window.location.assign(form.dataset.pages + answer.id);
      } else {
        say(answer.detail || "It could not be taken in (" + request.status + ").");
        button.disabled = false;
      }
    });
    request.addEventListener("error", function () {
      say("The connection broke; nothing was kept. Send it again.");
      button.disabled = false;
    });
    request.send(file);
  });
})();
