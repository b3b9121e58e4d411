// Logging drills with a thumb: on the bench each is kept at once; on a sheet they gather until the small file is given back.
// What is typed stays in this browser until then.
(async () => {
  "use strict";
  const { drawn, today, read, write, element, button, send, give } = globalThis.loopwrightSheet;
  const box = document.getElementById("entry");
  if (!box) {
    return;
  }
  const SHEET = JSON.parse(box.dataset.sheet);
  const TEXT = JSON.parse(box.dataset.texts);
  const KEY = `loopwright-drills-${SHEET.id}`;
  const state = await read(KEY, { drill: SHEET.first ?? SHEET.drills[0].name, now: {}, played: [] });
  if (SHEET.first && new URLSearchParams(location.search).has("drill")) {
    state.drill = SHEET.first;
  }
  const keep = () => write(KEY, state);
  const drill = () => SHEET.drills.find((d) => d.name === state.drill) ?? SHEET.drills[0];
  const of = (d) => (state.now[d.name] ??= { minutes: d.minutes });

  function step(name, value, least, most, by, to) {
    const move = (way) => {
      const from = value ?? (way > 0 ? least - by : least + by);
      to(Math.min(most, Math.max(least, from + way * by)));
      document.querySelector(`[data-${way > 0 ? "more" : "less"}=${name}]`)?.focus();
    };
    return element(
      "div",
      { class: "row" },
      element("span", {}, TEXT[name]),
      element(
        "div",
        { class: "step" },
        button("\u2212", () => move(-1), { "data-less": name, "aria-label": `${TEXT[name]}: ${TEXT.less}` }),
        element("output", { "aria-live": "polite", id: name }, value ?? "-"),
        button("+", () => move(1), { "data-more": name, "aria-label": `${TEXT[name]}: ${TEXT.more}` }),
      ),
    );
  }

  function field(name, input) {
    return element("label", { class: "row" }, element("span", {}, TEXT[name]), input);
  }

  const said = element("p", { role: "status" });
  function draw() {
    const d = drill();
    const now = of(d);
    const set = (key) => (value) => {
      now[key] = value;
      keep();
      draw();
    };
    const choose = element(
      "select",
      {
        id: "drill",
        change: (e) => {
          state.drill = e.target.value;
          keep();
          draw();
          document.getElementById("drill").focus();
        },
      },
      ...SHEET.drills.map((x) => element("option", x.name === d.name ? { value: x.name, selected: "" } : { value: x.name }, x.name)),
    );
    box.replaceChildren(
      field("drill", choose),
      element("p", {}, d.setUp),
      element("p", {}, d.scoring),
      element("p", { class: "note" }, `${TEXT.expect} ${d.expect} ${TEXT.of} ${d.most}.`),
      step("score", now.score, 0, d.most, 1, set("score")),
      step("minutes", now.minutes, 1, 240, 1, set("minutes")),
      field("date", element("input", { type: "date", id: "date", value: now.day ?? today(), max: today(), change: (e) => set("day")(e.target.value) })),
      field("note", element("input", { type: "text", id: "note", maxlength: 200, value: now.note ?? "", change: (e) => ((now.note = e.target.value), keep()) })),
      button(TEXT.keep, () => finish(d, now), { class: "main", id: "keep", ...(now.score === undefined ? { disabled: "" } : {}) }),
      said,
      ...(SHEET.post ? [] : gathered()),
    );
  }

  async function finish(d, now) {
    now.note = document.getElementById("note").value;
    const playing = { recording: (now.recording ??= drawn()), day: now.day || today(), drill: d.name, score: now.score, minutes: now.minutes, note: now.note };
    keep();
    if (SHEET.post && !(await post([playing]))) {
      return;
    }
    if (!SHEET.post) {
      state.played.push(playing);
    }
    delete state.now[d.name];
    await keep();
    if (SHEET.post) {
      location.assign(`/practice/log?player=${SHEET.player}&drill=${d.name}&said=${SHEET.said}`);
    } else {
      said.textContent = `${TEXT.kept} ${d.name}, ${playing.score} ${TEXT.of} ${d.most}.`;
      draw();
    }
  }

  function gathered() {
    if (state.played.length === 0) {
      return [element("p", { class: "note" }, TEXT.none)];
    }
    const remove = (i) => {
      state.played.splice(i, 1);
      keep();
      draw();
    };
    return [
      element(
        "ul",
        { class: "strokes", id: "played" },
        ...state.played.map((p, i) =>
          element("li", {}, `${p.day} ${p.drill}: ${p.score}`, button(TEXT.remove, () => remove(i), { "aria-label": `${TEXT.remove}: ${p.drill}, ${p.score}` })),
        ),
      ),
      button(TEXT.give, () => give(new File([file(state.played)], `drills-${today()}.json`, { type: "application/json" })), { class: "main", id: "give" }),
      element("p", { class: "note" }, TEXT.giveMeans),
      element("label", {}, element("span", {}, TEXT.text), element("textarea", { id: "text", readonly: "" }, file(state.played))),
      button(TEXT.again, () => {
        if (confirm(TEXT.sure)) {
          state.played = [];
          keep();
          draw();
        }
      }),
    ];
  }

  // The small file that the bench reads; every playing carries its own number.
  const file = (played) => JSON.stringify({ player: SHEET.player, drills: played }, null, 1);

  async function post(played) {
    const response = await send(SHEET.post, SHEET.player, new File([file(played)], "drill.json", { type: "application/json" }));
    if (!response.ok) {
      said.textContent = await response.text();
      return false;
    }
    SHEET.said = new URL(response.url).searchParams.get("said") ?? "";
    return true;
  }

  draw();
})();
