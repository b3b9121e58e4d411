// Writing a round down, hole by hole, with a thumb. What is typed is kept in this browser until it is handed over, so that
// closing or reloading loses nothing. On the bench the round is kept there; on a sheet it becomes a small file.
(async () => {
  "use strict";
  const { drawn, today, read, write, forget, element, button, send, give } = globalThis.loopwrightSheet;
  const box = document.getElementById("entry");
  if (!box) {
    return;
  }
  const SHEET = JSON.parse(box.dataset.sheet);
  const TEXT = JSON.parse(box.dataset.texts);
  const KEY = `loopwright-round-${SHEET.id}`;
  const COUNTS = ["tee_ball", "approach", "penalties", "chips", "first_putt_paces", "putts"];
  const LIES = ["tee", "fairway", "rough", "sand", "recovery", "green"];
  const strokesAreWritten = SHEET.tier === "c" || SHEET.tier === "d";

  const begin = () => ({ recording: drawn(), date: SHEET.date || today(), at: 0, holes: {} });
  let state = await read(KEY, begin());
  const keep = () => write(KEY, state);
  keep();

  const of = (hole) => (state.holes[hole.number] ??= {});
  const isWritten = (hole) => {
    const kept = state.holes[hole.number];
    return Boolean(kept && (kept.score || kept.picked_up || kept.strokes?.length));
  };
  const scoreOf = (hole) => {
    const kept = state.holes[hole.number] ?? {};
    if (strokesAreWritten && kept.strokes?.length) {
      return kept.strokes.length + kept.strokes.reduce((sum, s) => sum + (s.penalty ?? 0), 0);
    }
    return kept.score;
  };

  function step(hole, name, first, least) {
    const kept = of(hole);
    const most = name === "first_putt_paces" ? 80 : 20;
    const to = (value) => {
      kept[name] = value;
      keep();
      draw(true);
    };
    const next = (by) => to(kept[name] === undefined ? first : Math.min(most, Math.max(least, kept[name] + by)));
    return element(
      "div",
      { class: "row" },
      element("span", {}, TEXT[name]),
      element(
        "div",
        { class: "step" },
        button("\u2212", () => next(-1), { "data-less": name, "aria-label": `${TEXT[name]}: ${TEXT.less}` }),
        element("output", { "aria-live": "polite" }, kept[name] ?? "-"),
        button("+", () => next(1), { "data-more": name, "aria-label": `${TEXT[name]}: ${TEXT.more}` }),
        button(TEXT.clear, () => to(undefined), { class: "clear", "aria-label": `${TEXT[name]}: ${TEXT.clear}` }),
      ),
    );
  }

  function choose(hole, name, values) {
    const kept = of(hole);
    const toggle = (value) => {
      kept[name] = kept[name] === value ? undefined : value;
      keep();
      draw(true);
    };
    return element(
      "div",
      { class: "row", role: "group", "aria-label": TEXT[name] },
      element("span", {}, TEXT[name]),
      ...values.map((value) =>
        button(TEXT[value], () => toggle(value), {
          "data-choice": `${name} ${value}`,
          "aria-pressed": kept[name] === value,
          class: kept[name] === value ? "on" : "",
        }),
      ),
    );
  }

  // Strokes: lie and distance before each, typed or taken from the place that was tapped on the chart.
  function strokeRow(hole, stroke, i) {
    const change = (name, value) => {
      stroke[name] = value;
      keep();
    };
    const unit = stroke.lie === "green" ? TEXT.feet : SHEET.unit;
    return element(
      "li",
      {},
      element("strong", {}, `${i + 1}`),
      element(
        "select",
        { "aria-label": `${TEXT.lie} ${i + 1}`, "data-lie": i, change: (e) => (change("lie", e.target.value), draw(true)) },
        ...LIES.map((lie) => element("option", { value: lie, ...(lie === stroke.lie ? { selected: "" } : {}) }, TEXT[`lie_${lie}`])),
      ),
      element("input", {
        type: "number",
        inputmode: "numeric",
        min: 0,
        max: 700,
        value: stroke.distance ?? "",
        "aria-label": `${TEXT.distance} ${i + 1}, ${unit}`,
        "data-distance": i,
        input: (e) => change("distance", e.target.value === "" ? undefined : Number(e.target.value)),
      }),
      element("small", {}, unit),
      element("input", { type: "text", maxlength: 30, value: stroke.club ?? "", placeholder: TEXT.club, "aria-label": `${TEXT.club} ${i + 1}`, input: (e) => change("club", e.target.value), change: () => SHEET.options && draw(true) }),
      button(stroke.penalty ? `+${stroke.penalty}` : TEXT.penalty, () => (change("penalty", stroke.penalty ? undefined : 1), draw(true)), {
        "aria-pressed": Boolean(stroke.penalty),
        "aria-label": `${TEXT.penalties} ${i + 1}`,
        class: stroke.penalty ? "on" : "",
      }),
      button("\u00d7", () => (of(hole).strokes.splice(i, 1), keep(), draw(true)), { "aria-label": `${TEXT.remove} ${i + 1}` }),
      SHEET.options && stroke.lie !== "green" ? meant(hole, stroke, i, change) : "",
    );
  }

  // A playing lesson: what is meant is said before the options are shown, and afterwards whether it was struck so.
  let aiming = null;
  function meant(hole, stroke, i, change) {
    const answer = element("div", { class: "options", "aria-live": "polite", "data-options": i });
    answer.innerHTML = stroke.options ?? "";
    const show = async () => {
      answer.textContent = TEXT.working;
      const query = new URLSearchParams({ hole: hole.number, x: stroke.x, y: stroke.y, lie: stroke.lie, club: stroke.club, ax: stroke.ax, ay: stroke.ay });
      const response = await fetch(`${SHEET.options}&${query}`, { headers: { Accept: "text/plain" } });
      const text = await response.text();
      if (response.ok) {
        change("options", text);
        answer.innerHTML = text;
      } else {
        answer.textContent = text;
      }
    };
    const said = stroke.club && stroke.ax !== undefined;
    const struck = (value) =>
      button(TEXT[value], () => (change("asMeant", stroke.asMeant === value ? undefined : value), draw(true)), {
        "aria-pressed": stroke.asMeant === value,
        class: stroke.asMeant === value ? "on" : "",
        "aria-label": `${TEXT.as_meant} ${i + 1}: ${TEXT[value]}`,
      });
    return element(
      "div",
      { class: "meant" },
      button(stroke.ax === undefined ? TEXT.aim : TEXT.aimAgain, () => ((aiming = stroke), draw(true)), {
        "aria-pressed": aiming === stroke,
        class: aiming === stroke ? "on" : "",
        "data-aim": i,
      }),
      element(
        "select",
        { "aria-label": `${TEXT.meant_lie} ${i + 1}`, change: (e) => change("meantLie", e.target.value) },
        element("option", { value: "" }, TEXT.meant_lie),
        ...LIES.slice(1).map((lie) => element("option", { value: lie, ...(lie === stroke.meantLie ? { selected: "" } : {}) }, TEXT[`lie_${lie}`])),
      ),
      button(TEXT.options, show, { "data-show": i, ...(said ? {} : { disabled: "" }) }),
      element("span", {}, TEXT.as_meant),
      struck("as_yes"),
      struck("as_no"),
      answer,
    );
  }

  function strokes(hole) {
    const kept = of(hole);
    kept.strokes ??= [];
    const add = () => {
      const first = kept.strokes.length === 0;
      kept.strokes.push({ lie: first ? "tee" : "fairway", distance: first ? hole.lengthNumber : undefined });
      keep();
      draw();
    };
    const out = [];
    if (SHEET.tier === "d") {
      out.push(map(hole, kept));
    }
    out.push(
      element("ol", { class: "strokes", "aria-label": TEXT.strokesOf }, ...kept.strokes.map((s, i) => strokeRow(hole, s, i))),
      SHEET.tier === "d" ? "" : button(TEXT.addStroke, add, { id: "add-stroke" }),
      element("p", { class: "note" }, TEXT.strokesMean),
    );
    return out;
  }

  // The chart of the hole: a tap is where the next stroke was played from.
  function map(hole, kept) {
    const holder = element("div", { class: "map" });
    const placeOf = async (p, use) => {
      const first = !aiming && kept.strokes.length === 0 ? "&first=yes" : "";
      const response = await fetch(`${SHEET.places}&hole=${hole.number}&x=${p.x.toFixed(1)}&y=${p.y.toFixed(1)}${first}`);
      return response.ok ? use(await response.json()) : null;
    };
    const show = (text) => {
      holder.innerHTML = text;
      const svg = holder.querySelector("svg");
      const NS = "http://www.w3.org/2000/svg";
      const place = (name, attributes, words) => {
        const out = document.createElementNS(NS, name);
        Object.entries(attributes).forEach(([k, v]) => out.setAttribute(k, v));
        if (words) {
          out.textContent = words;
        }
        svg.append(out);
      };
      const points = kept.strokes.filter((s) => s.x !== undefined);
      place("path", { class: "way", d: points.map((s, i) => `${i ? "L" : "M"}${s.x} ${s.y}`).join("") });
      points
        .filter((s) => s.ax !== undefined)
        .forEach((s) => {
          place("path", { class: "line", d: `M${s.x} ${s.y}L${s.ax} ${s.ay}` });
          place("path", { class: "cross", d: `M${s.ax - 7} ${s.ay}h14m-7 -7v14` });
        });
      points.forEach((s, i) => {
        place("circle", { class: "mark", cx: s.x, cy: s.y, r: 5 });
        place("text", { class: "mark", x: s.x + 8, y: s.y - 6 }, `${i + 1}`);
      });
      svg.addEventListener("click", async (event) => {
        const p = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
        if (aiming) {
          Object.assign(aiming, await placeOf(p, (found) => ({ ax: found.x, ay: found.y, aimLat: found.lat, aimLon: found.lon })));
          aiming = null;
          keep();
          draw();
          return;
        }
        const found = await placeOf(p, (f) => f);
        if (found) {
          const first = kept.strokes.length === 0;
          kept.strokes.push({ ...found, lie: first ? "tee" : found.lie });
          keep();
          draw();
        }
      });
    };
    fetch(`${SHEET.chart}&hole=${hole.number}`).then(async (r) => r.ok && show(await r.text()));
    return holder;
  }

  const play = element("section", {});
  const card = element("section", { hidden: "" });
  box.append(play, card);

  function draw(stay) {
    const index = stay ? [...play.querySelectorAll("button, select")].indexOf(document.activeElement) : -1;
    const hole = SHEET.holes[state.at];
    const go = (by) => {
      state.at = Math.min(Math.max(state.at + by, 0), SHEET.holes.length - 1);
      aiming = null;
      keep();
      draw();
      scrollTo(0, 0);
    };
    const rows = strokesAreWritten ? strokes(hole) : [step(hole, "score", hole.par, 1)];
    rows.push(choose(hole, "picked_up", ["yes"]));
    if (SHEET.tier === "b") {
      if (hole.par > 3) {
        rows.push(choose(hole, "tee_ball", ["in play", "left", "right", "lost"]));
      }
      rows.push(
        choose(hole, "approach", ["green", "left", "right", "short", "long"]),
        step(hole, "penalties", 1, 0),
        step(hole, "chips", 1, 0),
        step(hole, "first_putt_paces", 5, 0),
        step(hole, "putts", 2, 0),
      );
    }
    play.replaceChildren(
      element(
        "nav",
        { "aria-label": TEXT.hole },
        button(TEXT.before, () => go(-1), { id: "before" }),
        button(TEXT.whole, showCard, { id: "whole" }),
        button(TEXT.after, () => go(1), { id: "after", class: "main" }),
      ),
      element("h2", {}, `${TEXT.hole} ${hole.number}`),
      element("p", { class: "note" }, `${TEXT.par} ${hole.par}, ${hole.length}`),
      ...rows,
    );
    play.hidden = false;
    card.hidden = true;
    if (index >= 0) {
      play.querySelectorAll("button, select")[index]?.focus();
    }
  }

  function showCard() {
    const written = SHEET.holes.filter(isWritten);
    const sum = written.reduce((total, h) => total + (scoreOf(h) ?? 0), 0);
    const openHole = (i) => {
      state.at = i;
      keep();
      draw();
    };
    const said = element("p", { role: "status", id: "entry-said" });
    const again = () => {
      if (confirm(TEXT.sure)) {
        state = begin();
        keep();
        draw();
      }
    };
    card.replaceChildren(
      element("nav", { "aria-label": TEXT.whole }, button(TEXT.back, () => draw(), { id: "back" })),
      element(
        "label",
        {},
        element("span", {}, TEXT.date),
        element("input", {
          type: "date",
          value: state.date,
          id: "date",
          change: (e) => {
            state.date = e.target.value || today();
            keep();
            showCard();
          },
        }),
      ),
      element(
        "table",
        {},
        element("thead", {}, element("tr", {}, ...["hole", "par", "score", "open"].map((k) => element("th", { scope: "col" }, TEXT[k === "score" ? "scoreShort" : k])))),
        element(
          "tbody",
          {},
          ...SHEET.holes.map((h, i) =>
            element(
              "tr",
              {},
              element("th", { scope: "row" }, h.number),
              element("td", {}, h.par),
              element("td", {}, state.holes[h.number]?.picked_up ? "x" : (scoreOf(h) ?? "-")),
              element("td", {}, button("\u2192", () => openHole(i), { "aria-label": `${TEXT.open} ${TEXT.hole} ${h.number}` })),
            ),
          ),
        ),
      ),
      element("p", { id: "sum" }, `${TEXT.strokes} ${sum} (${written.length})`),
      SHEET.post
        ? button(TEXT.keepRound, () => post(said), { class: "main", id: "keep-round" })
        : button(TEXT.give, () => give(file()), { class: "main", id: "give" }),
      said,
      SHEET.post ? "" : element("p", { class: "note" }, TEXT.giveMeans),
      element("label", {}, element("span", {}, TEXT.text), element("textarea", { id: "text", readonly: "" }, table())),
      button(TEXT.again, again),
    );
    card.hidden = false;
    play.hidden = true;
  }

  // The table that the bench reads (docs/rounds.md); the round is named by this recording.
  function table() {
    const cell = (v) => (v === undefined || v === null ? "" : /[",\n;]/.test(String(v)) ? `"${String(v).replaceAll('"', '""')}"` : String(v));
    const common = ["round", "date", "course", "tees", "lesson", "hole", "par", SHEET.lengthColumn];
    const about = (h) => [`sheet ${state.recording}`, state.date, SHEET.course, SHEET.tees, SHEET.lesson ? "yes" : "", h.number, h.par, h.lengthNumber];
    const written = SHEET.holes.filter(isWritten);
    const rows = strokesAreWritten
      ? [[...common, "club", "lie", SHEET.toHoleColumn, "to_hole_ft", "penalty", "picked_up", "lat", "lon", ...(SHEET.options ? ["aim_lat", "aim_lon", "meant_lie", "as_meant"] : [])]]
      : [[...common, "score", "picked_up", ...(SHEET.tier === "b" ? COUNTS : [])]];
    for (const h of written) {
      const kept = state.holes[h.number];
      if (!strokesAreWritten) {
        rows.push([...about(h), kept.picked_up ? "x" : kept.score, kept.picked_up, ...(SHEET.tier === "b" ? COUNTS.map((c) => kept[c]) : [])]);
        continue;
      }
      kept.strokes.forEach((s, i) => {
        const green = s.lie === "green";
        const last = i === kept.strokes.length - 1;
        rows.push([...about(h), s.club, s.lie, green ? "" : s.distance, green ? s.distance : "", s.penalty, last ? kept.picked_up : "", s.lat, s.lon, ...(SHEET.options ? [s.aimLat, s.aimLon, s.meantLie, s.asMeant?.slice(3)] : [])]);
      });
    }
    return `# player ${SHEET.player}\n${rows.map((r) => r.map(cell).join(",")).join("\n")}\n`;
  }

  async function post(said) {
    const response = await send(SHEET.post, SHEET.player, new File([table()], "round.csv", { type: "text/csv" }));
    if (response.ok) {
      await forget(KEY);
      location.assign(response.redirected ? response.url : SHEET.done);
    } else {
      said.textContent = await response.text();
    }
  }

  const file = () => new File([table()], `round-${state.date}-${state.recording.slice(0, 5)}.csv`, { type: "text/csv" });

  draw();
})();
