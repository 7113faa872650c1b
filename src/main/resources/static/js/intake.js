// Hands files in one by one with their progress; without this script the form does the same in one go.
(function () {
  "use strict";

  function row(list, file) {
    var item = document.createElement("li");
    var what = document.createElement("div");
    var name = document.createElement("div");
    var why = document.createElement("div");
    var bar = document.createElement("progress");
    item.append(document.createElement("span"), what);
    what.append(name, why, bar);
    name.className = "what";
    name.textContent = file.name;
    why.className = "why";
    why.textContent = "on its way";
    bar.max = 1;
    bar.value = 0;
    bar.setAttribute("aria-label", "Progress of " + file.name);
    list.append(item);
    return { why: why, bar: bar, name: name };
  }

  function says(receipt) {
    var words = { ACCEPTED: "accepted", HELD: "held", REFUSED: "refused" }[receipt.state];
    var first = receipt.remarks.find(function (remark) {
      return remark.severity === "HOLD" || remark.severity === "REFUSE";
    });
    var stored = receipt.surveyId ? ", " + receipt.jars + " jars and " + receipt.links + " link readings stored" : "";
    return (receipt.string || "String not known") + ": " + words + stored + (first ? ". " + first.place + ": " + first.message : "");
  }

  function correction(form) {
    var corrected = form.querySelector('[name="supersedes"]');
    return corrected
      ? "&supersedes=" + corrected.value + "&reason=" + encodeURIComponent(form.querySelector('[name="reason"]').value)
      : "";
  }

  // one name per file for as long as the page lives: a retry is the same upload
  function send(form, file, name, shown, done) {
    var request = new XMLHttpRequest();
    var string = form.querySelector('[name="string"]');
    var query = "?file=" + encodeURIComponent(file.name) + (string ? "&string=" + string.value : "") + correction(form);
    request.open("PUT", form.dataset.uploads + name + query);
    request.setRequestHeader("Content-Type", "application/octet-stream");
    request.setRequestHeader("X-CSRF-TOKEN", form.querySelector('[name="_csrf"]').value);
    request.upload.addEventListener("progress", function (event) {
      shown.bar.value = event.lengthComputable ? event.loaded / event.total : 0;
    });
    request.addEventListener("load", function () {
      shown.bar.remove();
      answered(form, request, name, shown);
      done();
    });
    request.addEventListener("error", function () {
      retry(form, file, name, shown);
      done();
    });
    request.send(file);
  }

  function answered(form, request, name, shown) {
    var answer = JSON.parse(request.responseText);
    if (request.status >= 300) {
      shown.why.textContent = answer.detail;
      return;
    }
    var link = document.createElement("a");
    link.href = form.dataset.receipts + name;
    link.textContent = shown.name.textContent;
    shown.name.replaceChildren(link);
    shown.why.textContent = says(answer);
  }

  function retry(form, file, name, shown) {
    var again = document.createElement("button");
    again.type = "button";
    again.className = "button small";
    again.textContent = "Try again";
    shown.why.textContent = "The network failed; the file may not have arrived. ";
    shown.why.append(again);
    again.addEventListener("click", function () {
      shown.why.textContent = "on its way again";
      send(form, file, name, shown, function () {});
    });
  }

  document.querySelectorAll("[data-hand-in]").forEach(function (form) {
    if (!window.crypto || !window.crypto.randomUUID) {
      return; // an insecure address: the plain form does it
    }
    form.addEventListener("submit", function (event) {
      event.preventDefault();
      var input = form.querySelector('input[type="file"]');
      var list = form.querySelector("[data-progress]");
      var files = Array.from(input.files);
      var next = function () {
        var file = files.shift();
        if (file) {
          send(form, file, crypto.randomUUID(), row(list, file), next);
        }
      };
      list.hidden = false;
      next();
      input.value = "";
    });
  });
})();
