// What can be said on the spot, by the limits that came with the walk. Provisional: the service's judgement counts.
// Each answer is null or {weight: "grave" | "remake" | "look" | "fine", words, short}.
(function () {
  "use strict";

  function value(typed, name) {
    var text = WalkSheet.number(typed, name);
    return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(text) ? parseFloat(text) : NaN;
  }

  function say(weight, words, short) {
    return { weight: weight, words: words, short: short || words };
  }

  function percent(share) {
    var rounded = Math.round(share * 100);
    return (rounded > 0 ? "+" : rounded < 0 ? "−" : "±") + Math.abs(rounded) + " %";
  }

  function median(values) {
    var sorted = values.slice().sort(function (a, b) {
      return a - b;
    });
    var middle = Math.floor(sorted.length / 2);
    return sorted.length % 2 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }

  // near ten or a thousand times the last value, or a tenth or a thousandth of it
  function slip(now, last, factor) {
    var near = function (target, within) {
      return now / last > target / within && now / last < target * within;
    };
    if (!(last > 0) || !(now > 0)) {
      return null;
    }
    if (near(1000, factor) || near(0.001, factor)) {
      return "a thousand times off last time: which unit does the test set show?";
    }
    return near(10, 1.5) || near(0.1, 1.5) ? "ten times off last time: is the decimal point right?" : null;
  }

  // how the jars read so far have changed since last time, in common
  function common(walk, typed, except) {
    var changes = walk.jars
      .filter(function (jar) {
        return jar.position !== except && jar.ohmic > 0 && value(typed, "jar-" + jar.position + "-ohmic") > 0;
      })
      .map(function (jar) {
        return value(typed, "jar-" + jar.position + "-ohmic") / jar.ohmic - 1;
      });
    return changes.length >= 5 ? { change: median(changes), count: changes.length } : null;
  }

  function comparable(walk, typed) {
    return typed.ohmicKind === walk.ohmicKind;
  }

  function jarOhmic(walk, typed, jar) {
    var now = value(typed, "jar-" + jar.position + "-ohmic");
    var unit = typed.ohmicKind === "conductance" ? "S" : "mΩ";
    if (Number.isNaN(now)) {
      return null;
    }
    if (now <= 0) {
      return say("grave", "Zero or less cannot be: the probes slipped.");
    }
    if (!jar.ohmic || !comparable(walk, typed)) {
      return say("fine", "Nothing of its kind to compare with.");
    }
    var slipped = slip(now, jar.ohmic, walk.limits.unitSlip);
    if (slipped) {
      return say("grave", "Last time " + jar.ohmic + " " + unit + ": " + slipped);
    }
    var change = now / jar.ohmic - 1;
    var others = common(walk, typed, jar.position);
    var beyond = change - (others ? others.change : 0);
    var words = "last time " + jar.ohmic + " " + unit + ", " + percent(change) + (others ? "; the " + others.count + " others " + percent(others.change) : "");
    if (Math.abs(beyond) > walk.limits.jarStep) {
      return say("look", words + ": press the probes anew and read again", "changed by " + percent(change));
    }
    var outside = jar.lowest && (now < jar.lowest || now > jar.highest);
    return outside ? say("look", words + "; outside " + jar.lowest + " to " + jar.highest + " " + unit, "outside its range") : say("fine", words);
  }

  function jarVolts(walk, typed, jar) {
    var now = value(typed, "jar-" + jar.position + "-volts");
    if (Number.isNaN(now)) {
      return null;
    }
    if (now < walk.limits.lowestJarVolts) {
      return say("grave", "Hardly a volt: probes reversed, or not touching?");
    }
    if (now > walk.limits.highestJarVolts) {
      return say("grave", "More than " + walk.limits.highestJarVolts + " V: no jar on float has that.");
    }
    return say("fine", jar.volts ? "last time " + jar.volts + " V" : "");
  }

  function jarCelsius(walk, typed, jar) {
    var now = value(typed, "jar-" + jar.position + "-celsius");
    var odd = now < walk.limits.coldestCelsius || now > walk.limits.warmestCelsius;
    return odd ? say("grave", "Is that in °C?") : null;
  }

  // the straps of a link in parallel; NaN until all are read
  function combined(typed, link) {
    var conductance = 0;
    for (var strap = 1; strap <= link.straps; strap++) {
      var now = value(typed, "link-" + link.ordinal + "-" + strap);
      conductance += now > 0 ? 1 / now : NaN;
    }
    return 1 / conductance;
  }

  function negativeStrap(typed, link) {
    for (var strap = 1; strap <= link.straps; strap++) {
      if (value(typed, "link-" + link.ordinal + "-" + strap) < 0) {
        return true;
      }
    }
    return false;
  }

  function link(walk, typed, place) {
    if (negativeStrap(typed, place)) {
      return say("grave", "Below zero cannot be: the probes are crossed.");
    }
    var now = combined(typed, place);
    if (!(now > 0)) {
      return null;
    }
    var shown = (place.straps > 1 ? "together " + now.toPrecision(3) + " µΩ; " : "") + (place.combinedMicroohms ? "last time " + place.combinedMicroohms + " µΩ" : "never read before");
    var slipped = slip(now, place.combinedMicroohms || place.kindMicroohms, walk.limits.unitSlip);
    if (slipped) {
      return say("grave", shown + ": " + slipped);
    }
    if (place.combinedMicroohms) {
      shown += ", " + percent(now / place.combinedMicroohms - 1);
    }
    if (place.overBaselineMicroohms && now > place.overBaselineMicroohms) {
      return say("remake", shown + "; over its limit of " + place.overBaselineMicroohms + " µΩ: clean, remake, re-measure", now.toPrecision(3) + " µΩ, limit " + place.overBaselineMicroohms + " µΩ");
    }
    if (place.overKindMicroohms && now > place.overKindMicroohms) {
      var far = shown + "; over the average of its kind (" + place.kindMicroohms + " µΩ)";
      return place.overBaselineMicroohms ? say("look", far, "over its kind") : say("remake", far + ": clean, remake, re-measure", now.toPrecision(3) + " µΩ, its kind " + place.kindMicroohms + " µΩ");
    }
    return say("fine", shown);
  }

  function whole(walk, typed) {
    var injected = value(typed, "injectedAmps");
    var clamped = value(typed, "clampedAmps");
    if (injected > 0 && Math.abs(clamped - injected) > walk.limits.clampShare * injected) {
      return say("look", "The clamped current is " + percent(clamped / injected - 1) + " off the injected one: current leaks past the clamp, or the clamp is not closed. Put it right before you go on.", "clamped current off");
    }
    if (walk.limits.highestRippleAmps && value(typed, "rippleAmps") > walk.limits.highestRippleAmps) {
      return say("look", "Ripple above " + walk.limits.highestRippleAmps + " A: a charger fault, and readings that jump.", "ripple high");
    }
    return injected > 0 && clamped > 0 ? say("fine", "Clamped and injected current agree.") : null;
  }

  function closing(walk, typed) {
    var now = value(typed, "closing");
    var read = walk.links
      .map(function (place) {
        return combined(typed, place);
      })
      .filter(function (microohms) {
        return microohms > 0;
      });
    var edge = Math.max(walk.limits.closingMicroohms, read.length ? walk.limits.closingShare * median(read) : 0);
    if (Number.isNaN(now)) {
      return null;
    }
    return Math.abs(now) <= edge ? say("fine", "The test is closed properly.") : say("grave", "A closing reading is near zero (at most " + edge.toPrecision(2) + " µΩ): hold both probes on one post.");
  }

  window.WalkJudge = { jarOhmic: jarOhmic, jarVolts: jarVolts, jarCelsius: jarCelsius, link: link, whole: whole, closing: closing, value: value };
})();
