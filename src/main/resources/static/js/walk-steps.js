// The stops of a walk in order. Each names the form's fields it fills, and what can be said of them on the spot.
(function () {
  "use strict";

  var REASONS = ["no way to the post", "covered", "damaged", "reading will not settle", "not wanted this time"];

  function field(name, label, unit, last, wanted) {
    return { name: name, label: label, unit: unit, last: last, wanted: wanted };
  }

  function wholeStep(walk) {
    var last = walk.last || {};
    return {
      id: "whole",
      name: "the string as a whole",
      title: "The string as a whole",
      hint: "Test current from the first positive to the last negative post; clamp a strap inside. What is not measured stays empty.",
      fields: [
        field("ambientCelsius", "Ambient", "°C", last.ambientCelsius, false),
        field("stringVolts", "String voltage", "V", last.stringVolts, false),
        field("floatAmps", "Float current", "A", last.floatAmps, false),
        field("rippleAmps", "Ripple current", "A", last.rippleAmps, false),
        field("injectedAmps", "Injected current", "A", last.injectedAmps, false),
        field("clampedAmps", "Clamped current", "A", null, false)
      ],
      judge: function (typed) {
        return WalkJudge.whole(walk, typed);
      }
    };
  }

  function worst(answers) {
    var order = ["grave", "remake", "look", "fine"];
    return answers.filter(Boolean).sort(function (a, b) {
      return order.indexOf(a.weight) - order.indexOf(b.weight);
    })[0] || null;
  }

  function jarStep(walk, jar, measured, kind) {
    var name = "jar-" + jar.position;
    var sameKind = kind === walk.ohmicKind;
    var fields = [field(name + "-ohmic", "Ohmic value", kind === "conductance" ? "S" : "mΩ", sameKind ? jar.ohmic : null, true)];
    if (measured.volts) {
      fields.push(field(name + "-volts", "Voltage", "V", jar.volts, true));
    }
    if (measured.celsius) {
      fields.push(field(name + "-celsius", "Temperature", "°C", null, false));
    }
    if (measured.gravity) {
      fields.push(field(name + "-gravity", "Specific gravity", "", null, false));
    }
    return {
      id: name,
      name: "jar " + jar.position,
      title: "Jar " + jar.position,
      hint: (jar.serial ? "serial " + jar.serial + ", " : "") + "tier " + jar.tier + (jar.lowest && sameKind ? "; expected " + jar.lowest + " to " + jar.highest + " " + walk.ohmicUnit : ""),
      asks: jar.asks,
      fields: fields,
      skip: "skip-" + name,
      reasons: REASONS,
      judge: function (typed) {
        return worst([WalkJudge.jarCelsius(walk, typed, jar), WalkJudge.jarVolts(walk, typed, jar), WalkJudge.jarOhmic(walk, typed, jar)].reverse());
      }
    };
  }

  function linkStep(walk, link) {
    var fields = [];
    for (var strap = 1; strap <= link.straps; strap++) {
      fields.push(field("link-" + link.ordinal + "-" + strap, link.straps > 1 ? "Strap " + strap : "Resistance", "µΩ", link.lastMicroohms[strap - 1], true));
    }
    return {
      id: "link-" + link.ordinal,
      name: link.name,
      title: link.name.charAt(0).toUpperCase() + link.name.substring(1),
      hint: link.between,
      asks: link.asks,
      fields: fields,
      skip: "skip-link-" + link.ordinal,
      remade: "remade-link-" + link.ordinal,
      reasons: REASONS,
      judge: function (typed) {
        return WalkJudge.link(walk, typed, link);
      }
    };
  }

  function closingStep(walk) {
    return {
      id: "closing",
      name: "the closing reading",
      title: "Close the test",
      hint: "Hold both probes on one post. Without this closing reading many test sets do not store jar " + walk.positions + ".",
      fields: [field("closing", "Closing reading", "µΩ", null, true)],
      skip: "skip-closing",
      reasons: ["the test set needs none", "it could not be taken"],
      judge: function (typed) {
        return WalkJudge.closing(walk, typed);
      }
    };
  }

  window.WalkSteps = {
    of: function (walk, measured, kind) {
      var steps = [wholeStep(walk), linkStep(walk, walk.links[0])];
      walk.jars.forEach(function (jar) {
        steps.push(jarStep(walk, jar, measured, kind), linkStep(walk, walk.links[jar.position]));
      });
      steps.push(closingStep(walk));
      return steps;
    }
  };
})();
