// Rescales a recipe in the reader's browser, by the same rules as the planner of the program. All masses are whole numbers of
// 10^-26 g and all percentages whole numbers of 10^-16 %, so that the figures agree with exact decimals to the last digit.
"use strict";
(() => {
  const PERCENT = 16, MASS = 8, GRAM = PERCENT + MASS + 2;
  const data = JSON.parse(document.getElementById("recipe-data").textContent);

  const read = (text, decimals) => {
    const found = /^\s*(\d{1,9})(?:[.,](\d*))?\s*$/.exec(text);
    if (!found || (found[2] || "").length > decimals) return null;
    return BigInt(found[1] + (found[2] || "").padEnd(decimals, "0"));
  };
  const halfEven = (value, by) => {
    const whole = value / by, left = 2n * (value % by);
    return left > by || (left === by && whole % 2n === 1n) ? whole + 1n : whole;
  };
  const ceiling = (value, by) => (value + by - 1n) / by;
  const show = (value, from, to) => {
    const digits = halfEven(value, 10n ** BigInt(from - to)).toString().padStart(to + 1, "0");
    return to === 0 ? digits : digits.slice(0, -to) + "." + digits.slice(-to);
  };
  const number = (value, decimals) => Number(value) / 10 ** decimals;

  // ---- shares of the batch -------------------------------------------------------------------------------------------
  const allows = (share, value) =>
    value >= 0n && (share.floor === null || value >= share.floor) && (share.ceiling === null || value <= share.ceiling);
  const rounded = (share) => {
    let value = halfEven(share.exact, share.step) * share.step;
    if (share.ceiling !== null && value > share.ceiling) value = share.ceiling / share.step * share.step;
    if (share.floor !== null && value < share.floor) value = ceiling(share.floor, share.step) * share.step;
    return allows(share, value) ? value : null;
  };
  const ontoResidue = (shares, whole, residue) => {
    let left = whole;
    const parts = [];
    for (let i = 0; i < shares.length; i++) {
      const part = i === residue ? 0n : rounded(shares[i]);
      if (part === null) return null;
      parts.push(part);
      left -= part;
    }
    if (!allows(shares[residue], left)) return null;
    parts[residue] = left;
    return parts;
  };
  const abs = (value) => (value < 0n ? -value : value);
  const spread = (shares, whole) => {
    const parts = shares.map(rounded);
    if (parts.includes(null)) return null;
    let left = whole - parts.reduce((sum, part) => sum + part, 0n);
    const moved = new Set();
    while (left !== 0n) {
      let best = -1, bestOff = 0n;
      for (let i = 0; i < shares.length; i++) {
        const move = left < 0n ? -shares[i].step : shares[i].step;
        if (moved.has(i) || shares[i].step > abs(left) || !allows(shares[i], parts[i] + move)) continue;
        const off = abs(parts[i] + move - shares[i].exact);
        if (best < 0 || off < bestOff) { best = i; bestOff = off; }
      }
      if (best < 0) return null;
      const move = left < 0n ? -shares[best].step : shares[best].step;
      parts[best] += move;
      left -= move;
      moved.add(best);
    }
    return parts;
  };

  // ---- lines ---------------------------------------------------------------------------------------------------------
  const hundred = 100n * 10n ** BigInt(PERCENT);
  const six = 10n ** BigInt(PERCENT - 6);
  const scale = (percent, line, own, divide) =>
    own === null || !line.written ? percent
      : divide(percent * read(line.written, MASS), own * six) * six;
  const down = (value, by) => value / by;

  // The lines with their percentages at the reader's strengths; null where nothing is left for the line that fills up.
  const resolve = (own) => {
    const lines = data.lines.map((line) => {
      const at = own[line.id] === undefined ? null : own[line.id];
      const limit = (text, divide) => (text === undefined ? null : scale(read(text, PERCENT), line, at, divide));
      const percent = scale(read(line.percent, PERCENT), line, at, halfEven);
      return { ...line, percent, least: limit(line.least, ceiling), most: limit(line.most, down) };
    });
    const left = hundred - lines.reduce((sum, line) => sum + line.percent, 0n);
    const rest = lines.find((line) => line.kind === "rest");
    if (left < 0n || (Object.keys(own).length > 0 && (!rest || left === 0n)) || (!rest && left !== 0n)) return null;
    if (rest) rest.percent = left;
    return lines.filter((line) => line.percent > 0n);
  };

  const reckon = (size, step, own) => {
    const lines = resolve(own);
    if (lines === null) return { lines: [], refusals: ["At these strengths nothing is left for the water, or this recipe has none that could give way."] };
    const whole = size * 10n ** BigInt(GRAM - MASS), of = (percent) => size * percent;
    const begun = new Set(), refusals = [], notes = [];
    for (const line of lines) {
      line.exact = of(line.percent);
      line.filled = begun.has(line.phase);
      begun.add(line.phase);
      const outside = line.most !== null && (line.percent < line.least || line.percent > line.most);
      if (outside) refusals.push(line.name + ": this share is not allowed.");
      line.limited = line.most !== null && !outside;
      line.share = { exact: line.exact, step, floor: line.limited ? of(line.least) : null, ceiling: line.limited ? of(line.most) : null };
      if (line.limited && rounded(line.share) === null) {
        refusals.push(line.name + ": your balance has no step between the least and the most that is allowed.");
        line.share = { exact: line.exact, step, floor: null, ceiling: null };
      }
    }
    let taker = -1;
    lines.forEach((line, i) => {
      if (line.most !== null || line.kind === "reading") return;
      const better = taker < 0
        || (line.kind === "rest") > (lines[taker].kind === "rest")
        || ((line.kind === "rest") === (lines[taker].kind === "rest") && line.exact > lines[taker].exact);
      if (better) taker = i;
    });
    const shares = lines.map((line) => line.share);
    const parts = (taker >= 0 && ontoResidue(shares, whole, taker)) || spread(shares, whole) || lines.map((line) => line.exact);
    lines.forEach((line, i) => { line.grams = parts[i]; judge(line, number(step, GRAM), refusals, notes); });
    return { lines, refusals, notes };
  };

  // What the balance cannot be trusted with: less than 200 s / tolerance, s being at least 0.41 steps.
  const judge = (line, step, refusals, notes) => {
    const spread = 0.41 * step * (line.filled ? Math.SQRT2 : 1);
    const minimum = 200 * spread / Number(line.tolerance), grams = number(line.grams, GRAM);
    const better = " Make " + roundUp(minimum * 100 / number(line.percent, PERCENT)) + " g or more, or use a finer balance.";
    if (line.grams <= 0n) {
      refusals.push(line.name + " would be rounded away." + better);
    } else if (grams < minimum) {
      const atStake = line.limited && (grams + 2 * spread > number(line.share.ceiling ?? 0n, GRAM)
        || (line.least > 0n && grams - 2 * spread < number(line.share.floor ?? 0n, GRAM)));
      if (atStake) refusals.push(line.name + ": so little cannot be weighed safely between its least and its most." + better);
      else notes.push(line.name + ": below " + Number(minimum.toPrecision(3)) + " g your balance is not true to ±" + line.tolerance + " %.");
    }
  };
  const roundUp = (value) => {
    const unit = 10 ** (Math.floor(Math.log10(value)) - 1);
    return Number((Math.ceil(value / unit - 1e-9) * unit).toPrecision(2));
  };

  // ---- the page ------------------------------------------------------------------------------------------------------
  const cell = (kind, id) => document.querySelector(`[data-${kind}="${CSS.escape(id)}"]`);
  const put = (list, sentences) => {
    list.replaceChildren(...sentences.map((sentence) => Object.assign(document.createElement("li"), { textContent: sentence })));
    list.hidden = sentences.length === 0;
  };
  const decimals = (text) => (text.split(".")[1] || "").length;

  const update = () => {
    const size = read(document.getElementById("size").value, MASS), stepText = document.getElementById("step").value;
    const own = {}, unread = [];
    if (size === null || size === 0n || size > 10n ** BigInt(MASS + 5)) unread.push("Type the batch in grams, above 0 and up to 100000.");
    for (const field of document.querySelectorAll("[data-own]")) {
      const line = data.lines.find((one) => one.id === field.dataset.own), typed = read(field.value, MASS);
      if (typed === null || typed === 0n || typed > read("100", MASS)) unread.push("Type the strength of " + line.name + " in percent, above 0 and up to 100.");
      else if (typed !== read(line.written, MASS)) own[line.id] = typed;
    }
    const answer = unread.length ? { lines: [], refusals: unread, notes: [] } : reckon(size, read(stepText, GRAM), own);
    const refused = answer.refusals.length > 0;
    put(document.getElementById("refusals"), answer.refusals);
    put(document.getElementById("notes"), refused ? [] : answer.notes);
    for (const line of data.lines) {
      const done = refused ? undefined : answer.lines.find((one) => one.id === line.id);
      const grams = cell("grams", line.id), percent = cell("percent", line.id);
      if (grams) grams.textContent = done ? show(done.grams, GRAM, decimals(stepText)) : "–";
      if (percent && done) percent.textContent = percentText(done.percent);
    }
    const total = answer.lines.reduce((sum, line) => sum + (line.grams ?? 0n), 0n);
    document.getElementById("total").textContent = refused ? "–" : show(total, GRAM, decimals(stepText));
    document.getElementById("for").textContent = refused ? "" : document.getElementById("size").value.trim().replace(",", ".");
    document.getElementById("step-shown").textContent = stepText;
  };
  const percentText = (percent) => {
    const own = show(percent, PERCENT, 6).replace(/0+$/, "");
    return show(percent, PERCENT, Math.min(6, Math.max(decimals(own), data.decimals)));
  };

  document.getElementById("yours").hidden = false;
  document.getElementById("yours").addEventListener("input", update);
  document.getElementById("yours").addEventListener("submit", (event) => event.preventDefault());
  document.getElementById("print").addEventListener("click", () => window.print());
})();
