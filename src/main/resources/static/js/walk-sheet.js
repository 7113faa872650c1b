// Writes a typed walk as a survey sheet: byte for byte what the service writes of the long form (see WalkSheet).
(function () {
  "use strict";

  var FACTS = [
    ["takenAt", "taken at"],
    ["takenBy", "taken by"],
    ["instrument", "instrument"],
    ["calibrationDue", "instrument calibration due"],
    ["ohmicKind", "ohmic kind"],
    ["ohmicHertz", "ohmic frequency Hz"],
    ["ambientCelsius", "ambient °C"],
    ["stringVolts", "string volts V"],
    ["floatAmps", "float current A"],
    ["rippleAmps", "ripple current A"],
    ["rippleVolts", "ripple volts V"],
    ["injectedAmps", "injected current A"],
    ["clampedAmps", "clamped current A"],
    ["onFloat", "on float"]
  ];
  var JAR = [["volts", "jar V"], ["celsius", "jar °C"], ["gravity", "jar SG"]];

  function word(typed, name) {
    return (typed[name] || "").replace(/\s+/g, " ").trim();
  }

  // a typed comma is a decimal mark
  function number(typed, name) {
    return word(typed, name).replace(/,/g, ".").replace(/−/g, "-");
  }

  function quoted(value) {
    return /[,"]/.test(value) ? '"' + value.replace(/"/g, '""') + '"' : value;
  }

  function note(walk, typed) {
    var skipped = [];
    var remade = [];
    function mention(list, name, what) {
      if (what) {
        list.push(name + " (" + what + ")");
      }
    }
    walk.links.forEach(function (link) {
      var before = number(typed, "remade-link-" + link.ordinal);
      mention(skipped, "jar " + link.ordinal, word(typed, "skip-jar-" + link.ordinal));
      mention(skipped, link.name, word(typed, "skip-link-" + link.ordinal));
      mention(remade, link.name, before && before + " µΩ before");
    });
    return [
      word(typed, "note"),
      skipped.length ? "Not read: " + skipped.join("; ") + "." : "",
      remade.length ? "Remade on site: " + remade.join("; ") + "." : "",
      word(typed, "skip-closing") ? "No closing reading: " + word(typed, "skip-closing") + "." : ""
    ].filter(Boolean).join(" ");
  }

  function facts(walk, typed) {
    var lines = [["site", walk.siteCode], ["string", walk.stringName]];
    FACTS.forEach(function (fact) {
      lines.push([fact[1], / (Hz|°C|V|A)$/.test(fact[1]) ? number(typed, fact[0]) : word(typed, fact[0])]);
    });
    lines.push(["note", note(walk, typed)]);
    return lines
      .filter(function (line) {
        return line[1];
      })
      .map(function (line) {
        return line[0] + "," + quoted(line[1]) + "\n";
      })
      .join("");
  }

  function columns(walk, typed) {
    var ohmic = ["ohmic", "jar " + (typed.ohmicKind === "conductance" ? "S" : "mΩ")];
    return [ohmic].concat(
      JAR.filter(function (column) {
        return walk.jars.some(function (jar) {
          return number(typed, "jar-" + jar.position + "-" + column[0]);
        });
      })
    );
  }

  function row(typed, position, jarColumns, straps) {
    var cells = [String(position)];
    jarColumns.forEach(function (column) {
      cells.push(position === 0 ? "" : quoted(number(typed, "jar-" + position + "-" + column[0])));
    });
    for (var strap = 1; strap <= straps; strap++) {
      cells.push(quoted(number(typed, "link-" + position + "-" + strap)));
    }
    return cells.join(",") + "\n";
  }

  function of(walk, typed) {
    var jarColumns = columns(walk, typed);
    var straps = Math.max.apply(null, walk.links.map(function (link) {
      return link.straps;
    }));
    var titles = ["position"].concat(jarColumns.map(function (column) {
      return column[1];
    }));
    for (var strap = 1; strap <= straps; strap++) {
      titles.push(strap === 1 ? "link µΩ" : "link " + strap + " µΩ");
    }
    var text = "ohmstead survey sheet,1\n" + facts(walk, typed) + "\n" + titles.join(",") + "\n";
    for (var position = 0; position <= walk.positions; position++) {
      text += row(typed, position, jarColumns, straps);
    }
    var closing = number(typed, "closing");
    if (closing) {
      text += walk.positions + 1 + ",".repeat(jarColumns.length + 1) + quoted(closing) + ",".repeat(straps - 1) + "\n";
    }
    return text;
  }

  window.WalkSheet = {
    of: of,
    number: number,
    fileName: function (walk, typed) {
      return "walk-" + walk.siteCode + "-" + walk.stringName + "-" + (typed.takenAt || "").substring(0, 10) + ".csv";
    }
  };
})();
