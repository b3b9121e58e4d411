// The chart of a hole: handles are dragged or moved with the arrow keys; the server answers from the solved hole.
const chart = document.querySelector(".chart");
if (chart) {
  const svg = chart.querySelector("svg");
  const over = svg.querySelector(".over");
  const answer = document.getElementById("answer");
  const said = document.getElementById("said");
  const planOver = over.innerHTML;
  const planWords = answer.innerHTML;
  const yard = Number(svg.dataset.yard);
  const page = Math.random().toString(36).slice(2);
  const handles = {};
  svg.querySelectorAll(".handle").forEach((h) => {
    const [x, y] = h.getAttribute("transform").match(/-?[\d.]+/g).map(Number);
    handles[h.dataset.handle] = { node: h, x, y, home: [x, y] };
  });
  let club = svg.dataset.club;
  let asking = null;
  let next = null;

  const contours = document.getElementById("contours");
  const lines = svg.querySelector(".contours");
  const drawLines = () => lines.classList.toggle("shown", contours.checked);
  contours.addEventListener("change", drawLines);
  drawLines();

  const place = (name, x, y) => {
    const h = handles[name];
    h.x = x;
    h.y = y;
    h.node.setAttribute("transform", `translate(${x.toFixed(1)} ${y.toFixed(1)})`);
    const left = Math.hypot(h.x - handles.pin.x, h.y - handles.pin.y) / yard;
    h.node.setAttribute("aria-valuenow", left.toFixed(0));
    h.node.setAttribute("aria-valuetext", `${left.toFixed(0)} yards from the hole`);
  };

  const point = (event) => {
    const p = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
    const box = svg.viewBox.baseVal;
    return [Math.min(Math.max(p.x, 0), box.width), Math.min(Math.max(p.y, 0), box.height)];
  };

  // One question at a time, and of those that come meanwhile only the last.
  const ask = (address, then) => {
    next = { address, then };
    if (!asking) {
      asking = run();
    }
  };
  const run = async () => {
    while (next) {
      const { address, then } = next;
      next = null;
      chart.classList.add("stale");
      const response = await fetch(`${address}&page=${page}`);
      if (response.ok) {
        await then(response);
      } else {
        answer.textContent = await response.text();
      }
      chart.classList.remove("stale");
    }
    asking = null;
  };

  const show = async (response) => {
    const got = await response.json();
    over.innerHTML = got.over;
    answer.innerHTML = got.words;
    if (got.aim) {
      club = got.club;
      place("aim", got.aim[0], got.aim[1]);
    }
    said.textContent = answer.querySelector("h2").textContent;
  };

  const where = (name) => `x=${handles[name].x.toFixed(1)}&y=${handles[name].y.toFixed(1)}`;
  const moved = {
    ball: () => ask(`/plan/hole/spot?${chart.dataset.query}&${where("ball")}`, show),
    aim: () =>
      ask(
        `/plan/hole/aim?${chart.dataset.query}&${where("ball")}&club=${encodeURIComponent(club)}` +
          `&ax=${handles.aim.x.toFixed(1)}&ay=${handles.aim.y.toFixed(1)}`,
        show,
      ),
    pin: () => {},
  };
  const dropped = {
    ball: () => {},
    aim: () => {},
    pin: () =>
      ask(`/plan/hole/location?${chart.dataset.query}&${where("pin")}`, async (response) => {
        chart.classList.add("stale");
        location.assign(await response.text());
      }),
  };

  let held = null;
  let grip = [0, 0];
  svg.addEventListener("pointerdown", (event) => {
    const handle = event.target.closest(".handle");
    if (handle) {
      held = handle.dataset.handle;
      const [x, y] = point(event);
      grip = [handles[held].x - x, handles[held].y - y];
      svg.setPointerCapture(event.pointerId);
      handle.focus();
      event.preventDefault();
    }
  });
  svg.addEventListener("pointermove", (event) => {
    if (held) {
      const [x, y] = point(event);
      place(held, x + grip[0], y + grip[1]);
      moved[held]();
    }
  });
  const release = () => {
    if (held) {
      dropped[held]();
      held = null;
    }
  };
  svg.addEventListener("pointerup", release);
  svg.addEventListener("pointercancel", release);

  const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  let settle = 0;
  svg.addEventListener("keydown", (event) => {
    const handle = event.target.closest(".handle");
    const step = arrows[event.key];
    if (!handle || !step) {
      return;
    }
    event.preventDefault();
    const name = handle.dataset.handle;
    const far = yard * (event.shiftKey ? 10 : 1);
    place(name, handles[name].x + step[0] * far, handles[name].y + step[1] * far);
    moved[name]();
    clearTimeout(settle);
    settle = setTimeout(dropped[name], 700);
  });

  answer.addEventListener("click", (event) => {
    if (event.target.closest("[data-back]")) {
      over.innerHTML = planOver;
      answer.innerHTML = planWords;
      club = svg.dataset.club;
      Object.entries(handles).forEach(([name, h]) => place(name, ...h.home));
    }
  });
}
