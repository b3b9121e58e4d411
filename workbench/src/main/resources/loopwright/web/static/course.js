// Mending a hole or a course: areas are drawn, their corners moved, put in and taken out; whole areas moved, described, cut,
// removed; marks (tees, the hole line, the hole location, trees, what is noted at places) moved, described, added, removed.
import { Pen } from "./pen.js";
import { far, snapped } from "./shapes.js";

const chart = document.querySelector(".editor");
if (chart) {
  const NS = "http://www.w3.org/2000/svg";
  const svg = chart.querySelector("svg");
  const layer = svg.querySelector(".edit");
  const unit = Number(svg.dataset.unit);
  const kind = document.getElementById("kind");
  const said = document.getElementById("edit-said");
  const SNAP = 1.5 * unit;
  const north = Number(svg.dataset.north);
  const BORDER = "boundary";
  const BORDER_KIND = "BOUNDARY";
  let areas = [];
  let cuts = [];
  let marks = [];
  let rules = [];
  let fresh = {};
  let assumed = {};
  let pen = null;
  let placing = false;
  let saved = "";
  let chosen = null;
  let past = [];
  let future = [];

  // Looking closer changes the view, and marks stay as large on the screen as they were.
  const whole = { width: svg.viewBox.baseVal.width, height: svg.viewBox.baseVal.height };
  let closer = 1;
  const look = (x, y, width) => {
    const w = Math.min(Math.max(width, 60), whole.width);
    const h = (w * whole.height) / whole.width;
    closer = w / whole.width;
    svg.setAttribute("viewBox", `${x - w / 2} ${y - h / 2} ${w} ${h}`);
  };
  const lookAtAll = () => look(whole.width / 2, whole.height / 2, whole.width);

  const snapshot = () => JSON.stringify({ areas, cuts, marks, rules });
  const remember = () => {
    past.push(snapshot());
    future = [];
  };
  const restore = (text) => {
    ({ areas, cuts, marks, rules } = JSON.parse(text));
    if (!find() && !findMark()) {
      chosen = null;
    }
    draw();
  };
  const path = (area) =>
    area.polygons
      .flat()
      .map((ring) => "M" + ring.map((c) => c.map((v) => v.toFixed(1)).join(" ")).join("L") + "Z")
      .join("");
  const element = (name, attributes) => {
    const out = document.createElementNS(NS, name);
    Object.entries(attributes).forEach(([k, v]) => out.setAttribute(k, v));
    return out;
  };
  const find = () => areas.find((a) => a.id === chosen);
  const keyOf = (mark) => `${mark.kind} ${mark.id}`;
  const findMark = () => marks.find((m) => keyOf(m) === chosen);
  const newId = () => `${Date.now().toString(36)}${Math.random().toString(36).slice(2, 6)}`;

  // Every kind of mark has a shape of its own; the aim of an arrow is turned, a crown is as large as the tree's.
  const SHAPES = {
    TEE: "M-7 -4H-1V4H-7ZM1 -4H7V4H1Z",
    BEND: "M0 -7L7 0L0 7L-7 0Z",
    HOLE_LOCATION: "M0 3V-18L13 -13L0 -8",
    SKYLINE: "M-6 6V-4L0 -13L6 -4V6Z",
    DROP_ZONE: "M-7 -7H7V7H-7ZM-7 -7L7 7M7 -7L-7 7",
    TEMPORARY_GREEN: "M-9 0A9 9 0 1 0 9 0A9 9 0 1 0 -9 0M0 3V-9L7 -6L0 -3",
    SPOT: "M-6 0H6M0 -6V6M-3 0A3 3 0 1 0 3 0A3 3 0 1 0 -3 0",
    ARROW: "M0 9V-9M-5 -3L0 -9L5 -3",
  };
  const wordsOf = (mark) => {
    const same = marks.filter((m) => m.kind === mark.kind);
    const kindWords = chart.getAttribute(`data-kind-${mark.kind.toLowerCase().replace("_", "-")}`);
    const which = mark.name || (same.length > 1 ? `${same.indexOf(mark) + 1} / ${same.length}` : "");
    return which ? `${kindWords}, ${which}` : kindWords;
  };

  function drawMarks() {
    const line = marks.filter((m) => m.kind === "BEND").map((m) => m.at.map((v) => v.toFixed(1)).join(" "));
    if (line.length > 1) {
      layer.append(element("path", { class: "playline", d: `M${line.join("L")}` }));
    }
    for (const mark of marks) {
      const key = keyOf(mark);
      const turn = mark.kind === "ARROW" ? mark.numbers.toward + north : 0;
      const group = element("g", {
        class: `mark ${mark.kind.toLowerCase()}${key === chosen ? " chosen" : ""}`,
        transform: `translate(${mark.at[0].toFixed(1)} ${mark.at[1].toFixed(1)}) scale(${closer}) rotate(${turn.toFixed(0)})`,
        tabindex: 0,
        role: "button",
        "aria-pressed": key === chosen,
        "aria-label": wordsOf(mark),
        "data-mark": key,
      });
      const crown = mark.kind === "TREE" ? (mark.numbers.crown * Number(svg.dataset.height)) / closer : 0;
      group.append(element("circle", { class: "grip", r: Math.max(10, crown) }));
      group.append(
        mark.kind === "TREE"
          ? element("circle", { class: "crown", r: Math.max(4, crown) })
          : element("path", { d: SHAPES[mark.kind] }),
      );
      layer.append(group);
    }
  }

  // The fields of what is chosen: the name of a mark, and the numbers that a mark or an area has.
  const markFields = document.getElementById("mark-fields");
  const areaFields = document.getElementById("area-fields");
  const named = (mark) => mark.kind === "SKYLINE" || (mark.kind === "TEE" && mark.id.startsWith("new "));
  function describe(fields, thing, words, shown) {
    fields.hidden = !thing || ![...fields.querySelectorAll("input")].some((i) => shown(i.dataset.what));
    if (fields.hidden) {
      return;
    }
    fields.querySelector("legend").textContent = words;
    for (const input of fields.querySelectorAll("input")) {
      const what = input.dataset.what;
      input.closest("label").hidden = !shown(what);
      if (input !== document.activeElement) {
        const value = what === "name" ? thing.name : thing.numbers[what];
        input.value = typeof value === "number" ? Number(value.toFixed(2)) : (value ?? "");
      }
    }
  }
  function describeChosen() {
    const mark = findMark();
    describe(markFields, mark, mark && wordsOf(mark), (what) => (what === "name" ? named(mark) : what in mark.numbers));
    const area = find();
    const usual = assumed[area?.kind] ?? {};
    areaFields.querySelectorAll("input").forEach((i) => (i.placeholder = Number((usual[i.dataset.what] ?? 0).toFixed(2))));
    describe(areaFields, area, area?.words, (what) => what in usual);
  }
  for (const fields of [markFields, areaFields]) {
    fields.addEventListener("focusin", () => (fields.dataset.before = snapshot()));
    fields.addEventListener("input", (event) => {
      const thing = findMark() ?? find();
      const what = event.target.dataset.what;
      const typed = event.target.value.trim().replace(",", ".");
      if (thing && what === "name") {
        thing.name = event.target.value;
      } else if (thing && typed !== "" && Number.isFinite(Number(typed))) {
        thing.numbers[what] = Number(typed);
      } else if (thing && typed === "" && fields === areaFields) {
        delete thing.numbers[what];
      }
      draw();
    });
    fields.addEventListener("change", () => {
      if (fields.dataset.before && fields.dataset.before !== snapshot()) {
        past.push(fields.dataset.before);
        future = [];
      }
      fields.dataset.before = snapshot();
      draw();
    });
  }

  const ticks = [...document.querySelectorAll("#rules input")];
  ticks.forEach((tick) =>
    tick.addEventListener("change", () => {
      remember();
      rules = ticks.filter((t) => t.checked).map((t) => t.value);
      draw();
    }),
  );

  function draw(focus) {
    layer.replaceChildren();
    for (const area of areas) {
      const shape = element("path", {
        d: path(area),
        class: `area${area.id === chosen ? " chosen" : ""}${area.id === BORDER ? " border" : ""}`,
        tabindex: 0,
        role: "button",
        "aria-pressed": area.id === chosen,
        "aria-label": area.words,
        "data-area": area.id,
      });
      layer.append(shape);
    }
    for (const cut of cuts) {
      layer.append(element("path", { d: path(cut), class: "cut" }));
    }
    drawMarks();
    const area = find();
    if (area) {
      area.polygons.forEach((polygon, p) =>
        polygon.forEach((ring, r) =>
          ring.forEach((corner, i) => {
            const next = ring[(i + 1) % ring.length];
            const middle = [(corner[0] + next[0]) / 2, (corner[1] + next[1]) / 2];
            if (Math.hypot(corner[0] - next[0], corner[1] - next[1]) > 16 * closer) {
              layer.append(
                element("circle", { class: "middle", cx: middle[0], cy: middle[1], r: 4 * closer, "data-insert": `${p} ${r} ${i}` }),
              );
            }
            layer.append(
              element("circle", {
                class: "corner",
                cx: corner[0],
                cy: corner[1],
                r: 5.5 * closer,
                tabindex: 0,
                role: "button",
                "aria-label": chart.dataset.corner.replace("{0}", i + 1).replace("{1}", ring.length),
                "data-corner": `${p} ${r} ${i}`,
              }),
            );
          }),
        ),
      );
      kind.value = area.kind;
    }
    pen?.draw(layer, element, closer);
    ticks.forEach((t) => (t.checked = rules.includes(t.value)));
    describeChosen();
    document.getElementById("draw").setAttribute("aria-pressed", String(pen?.line === false));
    document.getElementById("draw-line").setAttribute("aria-pressed", String(pen?.line === true));
    document.getElementById("undo").disabled = past.length === 0 && !pen;
    document.getElementById("redo").disabled = future.length === 0;
    document.getElementById("save").disabled = snapshot() === saved;
    if (focus) {
      layer.querySelector(focus)?.focus();
    }
  }

  const point = (event) => {
    const p = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
    return [p.x, p.y];
  };
  const indices = (text) => text.split(" ").map(Number);
  // Corners and marks hold to what lies near: to corners of other areas (and marks to other marks) first, then to edges.
  // What must lie on a green holds to no edge of it, where it could not stay.
  const ON_GREEN = ["HOLE_LOCATION", "SPOT", "ARROW"];
  const snap = (event, own) => {
    const at = point(event);
    if (event.altKey) {
      return at;
    }
    const places = own ? marks.filter((m) => m.kind !== own).map((m) => m.at) : [];
    const rings = areas.filter((a) => a.id !== chosen && !ON_GREEN.includes(own)).flatMap((a) => a.polygons.flat());
    return snapped(at, rings, places, SNAP);
  };
  const moveAll = (area, dx, dy) => area.polygons.flat(2).forEach((c) => ((c[0] += dx), (c[1] += dy)));

  let held = null;
  svg.addEventListener("pointerdown", (event) => {
    const target = event.target;
    if (pen) {
      put(snap(event), 5 * closer);
      event.preventDefault();
      return;
    }
    const grip = target.closest("[data-mark]");
    if (placing && findMark() && grip?.dataset.mark !== chosen) {
      placing = false;
      remember();
      findMark().at = snap(event, findMark().kind);
      held = { mark: true };
      draw(`[data-mark="${CSS.escape(chosen)}"]`);
    } else if (grip) {
      placing = false;
      chosen = grip.dataset.mark;
      remember();
      held = { mark: true };
      draw(`[data-mark="${CSS.escape(chosen)}"]`);
    } else if (target.dataset.corner || target.dataset.insert) {
      remember();
      let [p, r, i] = indices(target.dataset.corner ?? target.dataset.insert);
      const ring = find().polygons[p][r];
      if (target.dataset.insert) {
        ring.splice(i + 1, 0, point(event));
        i += 1;
      }
      held = { corner: [p, r, i] };
    } else if (target.dataset.area) {
      if (target.dataset.area === chosen) {
        remember();
        held = { from: point(event) };
      } else {
        chosen = target.dataset.area;
        draw(`[data-area="${CSS.escape(chosen)}"]`);
      }
    } else {
      return;
    }
    svg.setPointerCapture(event.pointerId);
    event.preventDefault();
  });
  svg.addEventListener("pointermove", (event) => {
    if (pen) {
      pen.at = snap(event);
      draw("[data-pen]");
    } else if (held?.mark) {
      findMark().at = snap(event, findMark().kind);
      draw();
    } else if (held?.corner) {
      const [p, r, i] = held.corner;
      find().polygons[p][r][i] = snap(event);
      draw();
    } else if (held?.from) {
      const at = point(event);
      moveAll(find(), at[0] - held.from[0], at[1] - held.from[1]);
      held.from = at;
      draw();
    }
  });
  const release = () => {
    const focus = held?.mark ? `[data-mark="${CSS.escape(chosen)}"]` : undefined;
    if (held && past.at(-1) === snapshot()) {
      past.pop();
    }
    held = null;
    draw(focus);
  };
  svg.addEventListener("pointerup", release);
  svg.addEventListener("pointercancel", release);

  const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  svg.addEventListener("keydown", (event) => {
    const { area, corner, mark } = event.target.dataset;
    const step = arrows[event.key]?.map((v) => v * unit * (event.shiftKey ? 10 : 1));
    if (pen) {
      if (step) {
        pen.at = pen.at.map((v, i) => v + step[i]);
        draw("[data-pen]");
      } else if (event.key === " ") {
        put([...pen.at], unit / 2);
      } else if (event.key === "Enter") {
        end();
      } else if (event.key === "Backspace") {
        pen.corners.pop();
        draw("[data-pen]");
      } else if (event.key === "Escape") {
        pen = null;
        said.textContent = "";
        draw();
      } else {
        return;
      }
    } else if (mark && (event.key === "Enter" || event.key === " ")) {
      chosen = mark;
      draw(`[data-mark="${CSS.escape(mark)}"]`);
    } else if (mark && mark === chosen && step) {
      remember();
      findMark().at = findMark().at.map((v, i) => v + step[i]);
      draw(`[data-mark="${CSS.escape(mark)}"]`);
    } else if (mark && mark === chosen && event.key === "Delete") {
      takeAway();
    } else if (area && (event.key === "Enter" || event.key === " ")) {
      chosen = area;
      draw(`[data-area="${CSS.escape(area)}"]`);
    } else if (area && area === chosen && step) {
      remember();
      moveAll(find(), ...step);
      draw(`[data-area="${CSS.escape(area)}"]`);
    } else if (area && area === chosen && event.key === "Delete") {
      remove();
    } else if (corner && step) {
      remember();
      const [p, r, i] = indices(corner);
      const at = find().polygons[p][r][i];
      at[0] += step[0];
      at[1] += step[1];
      draw(`[data-corner="${corner}"]`);
    } else if (corner && event.key === "Delete") {
      const [p, r, i] = indices(corner);
      if (find().polygons[p][r].length > 3) {
        remember();
        find().polygons[p][r].splice(i, 1);
        draw(`[data-corner="${p} ${r} 0"]`);
      }
    } else {
      return;
    }
    event.preventDefault();
  });

  // The border is an area of a kind of its own, and there is one.
  const kindWords = () => kind.selectedOptions[0].textContent;
  const setKind = (area) => {
    const border = kind.value === BORDER_KIND;
    area.kind = kind.value;
    area.numbers = {};
    if (border) {
      areas = areas.filter((a) => a === area || a.id !== BORDER);
    }
    area.id = border ? BORDER : area.id === BORDER || !area.id ? `drawn/${newId()}` : area.id;
    area.words = border ? kindWords() : `${kindWords()} ${area.id}`;
    chosen = area.id;
  };
  kind.addEventListener("change", () => {
    const area = find();
    if (area) {
      remember();
      setKind(area);
      draw();
    }
  });

  // The pen: a tap, or Space where it stands, puts a corner; a tap on the first or last corner, or Enter, ends.
  const put = (at, near) => {
    if (pen.put(at, near)) {
      end();
    } else {
      draw("[data-pen]");
    }
  };
  const end = async () => {
    const drawn = pen;
    if (!drawn.enough()) {
      said.textContent = chart.dataset.few;
      return;
    }
    const polygons = drawn.line ? await strip(drawn.corners) : [[drawn.corners]];
    if (polygons) {
      remember();
      pen = null;
      const area = { polygons };
      areas.push(area);
      setKind(area);
      said.textContent = "";
      draw(`[data-area="${CSS.escape(chosen)}"]`);
    }
  };
  const post = (address, body) =>
    fetch(address, {
      method: "POST",
      body: JSON.stringify({
        course: chart.dataset.course,
        seen: Number(chart.dataset.seen),
        hole: Number(chart.dataset.hole),
        ...body,
      }),
    });
  // A line becomes an area as wide as was said.
  const strip = async (line) => {
    const width = document.getElementById("line-width").value.trim().replace(",", ".");
    const response = await post("/course/strip", { line, width: Number(width) });
    if (!response.ok) {
      said.textContent = await response.text();
      return null;
    }
    return response.json();
  };
  const begin = (line) => {
    pen = pen?.line === line ? null : new Pen(line, middle(), chart.dataset.pen);
    placing = false;
    chosen = null;
    said.textContent = pen ? chart.dataset.drawing : "";
    draw("[data-pen]");
  };
  const on = (id, act) => document.getElementById(id)?.addEventListener("click", act);
  const middle = () => {
    const box = svg.viewBox.baseVal;
    return [box.x + box.width / 2, box.y + box.height / 2];
  };
  // A bend goes between the two it lies nearest to.
  const putIn = (mark) => {
    const bends = marks.filter((m) => m.kind === "BEND");
    const extra = (i) => {
      const [a, b] = [bends[i].at, bends[i + 1].at];
      return far(a, mark.at) + far(mark.at, b) - far(a, b);
    };
    let best = 0;
    for (let i = 1; i < bends.length - 1; i++) {
      best = extra(i) < extra(best) ? i : best;
    }
    const at = mark.kind === "BEND" ? marks.indexOf(bends[best]) + 1 : marks.length;
    marks.splice(at, 0, mark);
  };
  const takeAway = () => {
    const mark = findMark();
    const needed = mark.kind === "HOLE_LOCATION" || (mark.kind === "TEE" && !mark.id.startsWith("new "));
    if (needed || (mark.kind === "BEND" && marks.filter((m) => m.kind === "BEND").length < 3)) {
      said.textContent = chart.dataset.needed;
      return;
    }
    remember();
    marks = marks.filter((m) => m !== mark);
    chosen = null;
    draw();
  };
  on("mark-add", () => {
    const wanted = document.getElementById("mark-kind").value;
    const single = wanted === "TEMPORARY_GREEN" && marks.find((m) => m.kind === wanted);
    if (single) {
      chosen = keyOf(single);
      draw(`[data-mark="${CSS.escape(chosen)}"]`);
      return;
    }
    remember();
    const mark = { id: `new ${newId()}`, kind: wanted, at: middle(), name: "", numbers: { ...fresh[wanted] } };
    putIn(mark);
    chosen = keyOf(mark);
    pen = null;
    placing = true;
    said.textContent = chart.dataset.placing;
    draw(`[data-mark="${CSS.escape(chosen)}"]`);
  });
  on("draw", () => begin(false));
  on("draw-line", () => begin(true));
  on("zoom", () => {
    const area = find();
    const mark = findMark();
    if (closer === 1 && mark) {
      look(...mark.at, 160);
    } else if (closer < 1 || !area) {
      lookAtAll();
    } else {
      const xs = area.polygons.flat(2).map((c) => c[0]);
      const ys = area.polygons.flat(2).map((c) => c[1]);
      const size = Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
      look((Math.max(...xs) + Math.min(...xs)) / 2, (Math.max(...ys) + Math.min(...ys)) / 2, 1.8 * size);
    }
    draw();
  });
  on("cut", () => {
    const area = find();
    if (area && area.id !== BORDER) {
      remember();
      cuts.push(area);
      areas = areas.filter((a) => a !== area);
      chosen = null;
      draw();
    }
  });
  const remove = () => {
    if (findMark()) {
      takeAway();
    } else if (find()) {
      remember();
      areas = areas.filter((a) => a.id !== chosen);
      chosen = null;
      draw();
    }
  };
  on("remove", remove);
  on("photo", (event) => {
    const shown = svg.classList.toggle("over-photo");
    event.currentTarget.setAttribute("aria-pressed", String(shown));
    const address = new URL(location);
    address.searchParams.set("image", shown ? "shown" : "hidden");
    history.replaceState(null, "", address);
  });
  const undo = () => {
    if (pen) {
      pen = pen.corners.pop() ? pen : null;
      draw("[data-pen]");
    } else if (past.length) {
      future.push(snapshot());
      restore(past.pop());
    }
  };
  const redo = () => {
    if (future.length) {
      past.push(snapshot());
      restore(future.pop());
    }
  };
  on("undo", undo);
  on("redo", redo);
  addEventListener("keydown", (event) => {
    const key = event.key.toLowerCase();
    if ((event.ctrlKey || event.metaKey) && ["z", "y"].includes(key) && !event.target.matches("input, textarea")) {
      (key === "y" || event.shiftKey ? redo : undo)();
      event.preventDefault();
    }
  });
  // Marks that are new, moved or described anew, those that are gone, and the hole line if any of it changed.
  const changedMarks = () => {
    const old = JSON.parse(saved).marks;
    const before = new Map(old.map((m) => [keyOf(m), JSON.stringify(m)]));
    const now = new Set(marks.map(keyOf));
    const line = (all) => all.filter((m) => m.kind === "BEND").map((m) => m.at);
    const out = {
      marks: marks.filter((m) => m.kind !== "BEND" && before.get(keyOf(m)) !== JSON.stringify(m)),
      gone: old.filter((m) => m.kind !== "BEND" && !now.has(keyOf(m))).map(({ kind: k, id }) => ({ kind: k, id })),
    };
    return JSON.stringify(line(old)) === JSON.stringify(line(marks)) ? out : { ...out, line: line(marks) };
  };
  on("save", async () => {
    const before = new Map(JSON.parse(saved).areas.map((a) => [a.id, JSON.stringify(a)]));
    const cutIds = new Set(cuts.map((c) => c.id));
    const body = {
      drawn: areas.filter((a) => before.get(a.id) !== JSON.stringify(a)),
      removed: [...before.keys()].filter((id) => !areas.some((a) => a.id === id) || cutIds.has(id)),
      cuts,
      ...changedMarks(),
      ...(JSON.stringify(JSON.parse(saved).rules) === JSON.stringify(rules) ? {} : { rules }),
    };
    const response = await post("/course/areas", body);
    if (response.ok) {
      saved = snapshot();
      location.reload();
    } else {
      said.textContent = await response.text();
    }
  });
  addEventListener("beforeunload", (event) => {
    if (snapshot() !== saved) {
      event.preventDefault();
    }
  });

  const response = await fetch(`/course/areas?course=${chart.dataset.course}&hole=${chart.dataset.hole}`);
  ({ areas, marks, rules, fresh, assumed } = await response.json());
  saved = snapshot();
  if (chart.dataset.found) {
    look(...chart.dataset.found.split(" ").map(Number), 160);
  }
  draw();
  chart.dataset.ready = "yes";
}
