// Mending the areas of a hole: corners are moved, put in and taken out; whole areas moved, added, cut, removed.
const chart = document.querySelector(".editor");
if (chart) {
  const NS = "http://www.w3.org/2000/svg";
  const svg = chart.querySelector("svg");
  const layer = svg.querySelector(".edit");
  const yard = Number(svg.dataset.yard);
  const kind = document.getElementById("kind");
  const said = document.getElementById("edit-said");
  const SNAP = 1.5 * yard;
  let areas = [];
  let cuts = [];
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

  const snapshot = () => JSON.stringify({ areas, cuts });
  const remember = () => {
    past.push(snapshot());
    future = [];
  };
  const restore = (text) => {
    ({ areas, cuts } = JSON.parse(text));
    if (!areas.some((a) => a.id === chosen)) {
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

  function draw(focus) {
    layer.replaceChildren();
    for (const area of areas) {
      const shape = element("path", {
        d: path(area),
        class: area.id === chosen ? "area chosen" : "area",
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
                "aria-label": `Corner ${i + 1} of ${ring.length}`,
                "data-corner": `${p} ${r} ${i}`,
              }),
            );
          }),
        ),
      );
      kind.value = area.kind;
    }
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
    if (target.dataset.corner || target.dataset.insert) {
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
    if (held?.corner) {
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
    if (held && past.at(-1) === snapshot()) {
      past.pop();
    }
    held = null;
    draw();
  };
  svg.addEventListener("pointerup", release);
  svg.addEventListener("pointercancel", release);

  const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  svg.addEventListener("keydown", (event) => {
    const { area, corner } = event.target.dataset;
    const step = arrows[event.key]?.map((v) => v * yard * (event.shiftKey ? 10 : 1));
    if (area && (event.key === "Enter" || event.key === " ")) {
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
    if (area) {
      remember();
      area.kind = kind.value;
      area.words = `${kind.selectedOptions[0].textContent} ${area.id}`;
      draw();
    }
  });
  const on = (id, act) => document.getElementById(id)?.addEventListener("click", act);
  on("add", () => {
    remember();
    const box = svg.viewBox.baseVal;
    const [x, y, d] = [box.width / 2, box.height / 2, 10 * yard];
    chosen = `drawn/${Date.now().toString(36)}${Math.random().toString(36).slice(2, 6)}`;
    const ring = [[x - d, y - d], [x + d, y - d], [x + d, y + d], [x - d, y + d]];
    areas.push({ id: chosen, kind: kind.value, words: `${kind.selectedOptions[0].textContent} ${chosen}`, polygons: [[ring]] });
    draw(`[data-area="${CSS.escape(chosen)}"]`);
  });
  on("zoom", () => {
    const area = find();
    if (closer < 1 || !area) {
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
    if (area) {
      remember();
      cuts.push(area);
      areas = areas.filter((a) => a !== area);
      chosen = null;
      draw();
    }
  });
  on("remove", () => {
    if (find()) {
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
  areas = await response.json();
  saved = snapshot();
  if (chart.dataset.found) {
    look(...chart.dataset.found.split(" ").map(Number), 160);
  }
  draw();
  chart.dataset.ready = "yes";
}
