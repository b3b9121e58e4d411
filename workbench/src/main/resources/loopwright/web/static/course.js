// Mending a hole or a course: corners of areas are moved, put in and taken out; whole areas moved, added, cut, removed;
// marks (tees, the hole line, the hole location, trees, what is noted at places) moved, described, added, removed.
const chart = document.querySelector(".editor");
if (chart) {
  const NS = "http://www.w3.org/2000/svg";
  const svg = chart.querySelector("svg");
  const layer = svg.querySelector(".edit");
  const yard = Number(svg.dataset.yard);
  const kind = document.getElementById("kind");
  const said = document.getElementById("edit-said");
  const SNAP = 1.5 * yard;
  const north = Number(svg.dataset.north);
  const BORDER = "boundary";
  let areas = [];
  let cuts = [];
  let marks = [];
  let fresh = {};
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

  const snapshot = () => JSON.stringify({ areas, cuts, marks });
  const remember = () => {
    past.push(snapshot());
    future = [];
  };
  const restore = (text) => {
    ({ areas, cuts, marks } = JSON.parse(text));
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

  // The fields of the chosen mark: a name, and the numbers it has.
  const fields = document.getElementById("mark-fields");
  const named = (mark) => mark.kind === "SKYLINE" || (mark.kind === "TEE" && mark.id.startsWith("new "));
  function describe() {
    const mark = findMark();
    fields.hidden = !mark;
    if (!mark) {
      return;
    }
    document.getElementById("mark-said").textContent = wordsOf(mark);
    for (const input of fields.querySelectorAll("input")) {
      const what = input.dataset.what;
      const shown = what === "name" ? named(mark) : what in mark.numbers;
      input.closest("label").hidden = !shown;
      if (shown && input !== document.activeElement) {
        input.value = what === "name" ? mark.name : Number(mark.numbers[what].toFixed(2));
      }
    }
  }
  fields.addEventListener("focusin", () => fields.dataset.before = snapshot());
  fields.addEventListener("input", (event) => {
    const mark = findMark();
    const what = event.target.dataset.what;
    if (mark && what === "name") {
      mark.name = event.target.value;
    } else if (mark && event.target.value.trim() !== "" && Number.isFinite(Number(event.target.value))) {
      mark.numbers[what] = Number(event.target.value);
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
      if (area.id !== BORDER) {
        kind.value = area.kind;
      }
    }
    describe();
    document.getElementById("undo").disabled = past.length === 0;
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
  const snapped = (at) => {
    let best = at;
    let least = SNAP;
    for (const other of areas.filter((a) => a.id !== chosen)) {
      for (const corner of other.polygons.flat(2)) {
        const d = Math.hypot(corner[0] - at[0], corner[1] - at[1]);
        if (d < least) {
          least = d;
          best = [...corner];
        }
      }
    }
    return best;
  };
  const moveAll = (area, dx, dy) => area.polygons.flat(2).forEach((c) => ((c[0] += dx), (c[1] += dy)));

  // A place for the notes beside the chart: the next tap says where.
  let marking = false;
  const form = document.getElementById("note-place");
  const marked = () => {
    layer.querySelector(".marked")?.remove();
    const [x, y] = [form.elements.x.value, form.elements.y.value].map(Number);
    if (form.elements.x.value && form.elements.y.value) {
      layer.append(element("path", { class: "marked", d: `M${x - 9} ${y}H${x + 9}M${x} ${y - 9}V${y + 9}M${x - 5} ${y}A5 5 0 1 0 ${x + 5} ${y}A5 5 0 1 0 ${x - 5} ${y}` }));
    }
  };
  ["x", "y"].forEach((name) => form?.elements[name].addEventListener("input", marked));

  let held = null;
  svg.addEventListener("pointerdown", (event) => {
    const target = event.target;
    if (marking) {
      const [x, y] = point(event);
      form.elements.x.value = x.toFixed(1);
      form.elements.y.value = y.toFixed(1);
      marking = false;
      document.getElementById("mark").setAttribute("aria-pressed", "false");
      form.closest("details").open = true;
      marked();
      event.preventDefault();
      return;
    }
    const grip = target.closest("[data-mark]");
    if (grip) {
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
    if (held?.mark) {
      findMark().at = point(event);
      draw();
    } else if (held?.corner) {
      const [p, r, i] = held.corner;
      find().polygons[p][r][i] = event.altKey ? point(event) : snapped(point(event));
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
    const step = arrows[event.key]?.map((v) => v * yard * (event.shiftKey ? 10 : 1));
    if (mark && (event.key === "Enter" || event.key === " ")) {
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

  kind.addEventListener("change", () => {
    const area = find();
    if (area && area.id !== BORDER) {
      remember();
      area.kind = kind.value;
      area.words = `${kind.selectedOptions[0].textContent} ${area.id}`;
      draw();
    }
  });
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
      const far = (p, q) => Math.hypot(p[0] - q[0], p[1] - q[1]);
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
    draw(`[data-mark="${CSS.escape(chosen)}"]`);
  });
  on("border", () => {
    if (!areas.some((a) => a.id === BORDER)) {
      remember();
      const [w, h] = [whole.width, whole.height];
      const ring = [[0.1 * w, 0.1 * h], [0.9 * w, 0.1 * h], [0.9 * w, 0.9 * h], [0.1 * w, 0.9 * h]];
      areas.unshift({ id: BORDER, kind: "BOUNDARY", words: chart.dataset.border, polygons: [[ring]] });
    }
    chosen = BORDER;
    draw(`[data-area="${BORDER}"]`);
  });
  on("add", () => {
    remember();
    const [x, y] = middle();
    const d = 10 * yard;
    chosen = `drawn/${newId()}`;
    const ring = [[x - d, y - d], [x + d, y - d], [x + d, y + d], [x - d, y + d]];
    areas.push({ id: chosen, kind: kind.value, words: `${kind.selectedOptions[0].textContent} ${chosen}`, polygons: [[ring]] });
    draw(`[data-area="${CSS.escape(chosen)}"]`);
  });
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
  on("remove", () => {
    if (findMark()) {
      takeAway();
    } else if (find()) {
      remember();
      areas = areas.filter((a) => a.id !== chosen);
      chosen = null;
      draw();
    }
  });
  on("photo", (event) => {
    const shown = svg.classList.toggle("over-photo");
    event.currentTarget.setAttribute("aria-pressed", String(shown));
    const address = new URL(location);
    address.searchParams.set("image", shown ? "shown" : "hidden");
    history.replaceState(null, "", address);
  });
  on("mark", () => {
    marking = !marking;
    document.getElementById("mark").setAttribute("aria-pressed", String(marking));
  });
  on("undo", () => {
    future.push(snapshot());
    restore(past.pop());
  });
  on("redo", () => {
    past.push(snapshot());
    restore(future.pop());
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
      course: chart.dataset.course,
      seen: Number(chart.dataset.seen),
      hole: Number(chart.dataset.hole),
      drawn: areas.filter((a) => before.get(a.id) !== JSON.stringify(a)),
      removed: [...before.keys()].filter((id) => !areas.some((a) => a.id === id) || cutIds.has(id)),
      cuts,
      ...changedMarks(),
    };
    const response = await fetch("/course/areas", { method: "POST", body: JSON.stringify(body) });
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
  ({ areas, marks, fresh } = await response.json());
  saved = snapshot();
  if (chart.dataset.found) {
    look(...chart.dataset.found.split(" ").map(Number), 160);
  }
  draw();
  chart.dataset.ready = "yes";
}
