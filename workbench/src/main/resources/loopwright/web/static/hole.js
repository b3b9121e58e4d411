// The chart of a hole: handles are dragged or moved with the arrow keys; the server answers from the solved hole. Where
// the hole itself changes (wind, flag, locks) a first, coarser answer comes at once and the full one takes its place.
const part = document.getElementById("part");
const page = Math.random().toString(36).slice(2);
let wanted = location.search.slice(1);
// What stays while the hole is solved again: the lines that are shown, and where ball and aim were put.
let lines = "no-lines";
let stand = null;
// The two choices that are compared: a club's name, or "yours".
const pair = {};

// Shows the hole for other inputs. Of several asked for in a row only the last is shown.
async function load(query, first) {
  wanted = query;
  if (first) {
    part.querySelector(".chart")?.classList.add("stale");
  }
  const response = await fetch(`/plan/hole/part?${query}&page=${page}${first ? "&first=yes" : ""}`);
  if (query !== wanted || response.status === 204) {
    return;
  }
  if (response.status === 202) {
    return load(query, first); // still being solved
  }
  const text = await response.text();
  if (!response.ok) {
    part.querySelector(".chart")?.classList.remove("stale");
    const answer = document.getElementById("answer");
    (answer ?? part).textContent = text;
    return;
  }
  const held = document.activeElement?.id || document.activeElement?.dataset?.handle;
  part.innerHTML = text;
  mount();
  if (held) {
    (document.getElementById(held) ?? part.querySelector(`[data-handle="${held}"]`))?.focus();
  }
}

// Goes to other inputs: the address follows, so that the page can be shared, reloaded and left by the back button.
function go(query) {
  history.pushState(null, "", `/plan/hole?${query}`);
  return load(query, true);
}
addEventListener("popstate", () => load(location.search.slice(1), true));

function mount() {
  const chart = part.querySelector(".chart");
  if (!chart) {
    return;
  }
  mountChart(chart);
  mountWind(part.querySelector(".wind"));
  part.querySelectorAll("a.resolve").forEach((link) =>
    link.addEventListener("click", (event) => {
      event.preventDefault();
      go(link.search.slice(1));
    }),
  );
  chart.dataset.ready = "yes";
  if (chart.dataset.first === "true") {
    load(wanted, false);
  }
}

// The wind: the arrow is turned by dragging or with the arrow keys, speed and bearing can be typed.
function mountWind(box) {
  const dial = box.querySelector(".dial");
  const arrow = dial.querySelector(".blow");
  const speed = document.getElementById("wind-speed");
  const from = document.getElementById("wind-from");
  const north = Number(dial.dataset.north);
  const turn = (degrees) => {
    const bearing = ((Math.round(degrees) % 360) + 360) % 360;
    from.value = bearing;
    dial.setAttribute("aria-valuenow", bearing);
    arrow.setAttribute("transform", `rotate(${north + bearing + 180})`);
    dial.classList.toggle("still", Number(speed.value) === 0);
  };
  let idle = 0;
  const solve = (wait) => {
    clearTimeout(idle);
    idle = setTimeout(() => {
      const query = new URLSearchParams(part.querySelector(".chart").dataset.query);
      ["wind", "from", "gust"].forEach((name) => query.delete(name));
      const blow = Math.round(Number(speed.value) * Number(box.dataset.perUnit) * 1e6) / 1e6;
      if (blow > 0) {
        query.set("wind", blow);
        query.set("from", from.value);
        const gust = Number(box.dataset.gust) * blow;
        if (gust > blow) {
          query.set("gust", gust);
        }
      }
      go(query.toString());
    }, wait);
  };
  const bearingOf = (event) => {
    const r = dial.getBoundingClientRect();
    const x = event.clientX - r.left - r.width / 2;
    const y = event.clientY - r.top - r.height / 2;
    return (Math.atan2(x, -y) * 180) / Math.PI - north - 180;
  };
  let held = false;
  dial.addEventListener("pointerdown", (event) => {
    held = true;
    dial.setPointerCapture(event.pointerId);
    turn(bearingOf(event));
    event.preventDefault();
    dial.focus();
  });
  dial.addEventListener("pointermove", (event) => held && turn(bearingOf(event)));
  dial.addEventListener("pointerup", () => {
    held = false;
    if (Number(speed.value) > 0) {
      solve(0);
    }
  });
  const steps = { ArrowLeft: -5, ArrowDown: -5, ArrowRight: 5, ArrowUp: 5, PageDown: -45, PageUp: 45 };
  dial.addEventListener("keydown", (event) => {
    if (steps[event.key]) {
      event.preventDefault();
      turn(Number(from.value) + steps[event.key]);
      if (Number(speed.value) > 0) {
        solve(600);
      }
    }
  });
  speed.addEventListener("change", () => {
    turn(Number(from.value));
    solve(0);
  });
  from.addEventListener("change", () => {
    turn(Number(from.value));
    if (Number(speed.value) > 0) {
      solve(0);
    }
  });
}

function mountChart(chart) {
  const svg = chart.querySelector("svg");
  const over = svg.querySelector(".over");
  const answer = document.getElementById("answer");
  const said = document.getElementById("said");
  const planOver = over.innerHTML;
  const planWords = answer.innerHTML;
  const unit = Number(svg.dataset.length);
  const handles = {};
  svg.querySelectorAll(".handle").forEach((h) => {
    const [x, y] = h.getAttribute("transform").match(/-?[\d.]+/g).map(Number);
    handles[h.dataset.handle] = { node: h, x, y, home: [x, y] };
  });
  let club = svg.dataset.club;
  let last = "";
  let asking = null;
  let next = null;

  const aims = svg.querySelector(".aims");
  const aimTable = document.getElementById("aim-table");
  const drawLines = () => {
    svg.querySelector(".contours").classList.toggle("shown", lines === "contours");
    // what lies under the aims is the ground alone
    aims.classList.toggle("shown", lines === "aims");
    over.classList.toggle("covered", lines === "aims");
    aimTable.hidden = lines !== "aims";
    drawAims();
  };
  part.querySelectorAll("[name=lines]").forEach((radio) => {
    radio.checked = radio.id === lines;
    radio.addEventListener("change", () => {
      lines = radio.id;
      drawLines();
    });
  });

  const place = (name, x, y) => {
    const h = handles[name];
    h.x = x;
    h.y = y;
    h.node.setAttribute("transform", `translate(${x.toFixed(1)} ${y.toFixed(1)})`);
    const left = Math.hypot(h.x - handles.pin.x, h.y - handles.pin.y) / unit;
    h.node.setAttribute("aria-valuenow", left.toFixed(0));
    h.node.setAttribute("aria-valuetext", `${left.toFixed(0)} ${svg.dataset.unit} from the hole`);
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
      if (response.status === 204) {
        continue;
      }
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
    stand = { frame: frame(), ball: at("ball"), aim: at("aim"), club, last };
    drawAims();
    choosePair();
  };

  const at = (name) => [handles[name].x, handles[name].y];
  // Places on the chart mean the same as long as it is drawn round the same hole location.
  const frame = () => [svg.getAttribute("viewBox"), ...handles.pin.home].join(" ");
  const where = (name) => `x=${handles[name].x.toFixed(1)}&y=${handles[name].y.toFixed(1)}`;

  // Strokes over all aims from the ball: worked out anew when it was moved, the old lines marked until then.
  let aimsOf = "";
  let aimsBusy = false;
  const drawAims = async () => {
    const from = `${chart.dataset.query}&${where("ball")}`;
    if (lines !== "aims" || from === aimsOf) {
      return;
    }
    aims.classList.add("stale");
    aimTable.classList.add("stale");
    if (aimsBusy) {
      return;
    }
    aimsBusy = true;
    const response = await fetch(`/plan/hole/aims?${from}&page=${page}`);
    aimsBusy = false;
    aimsOf = from;
    if (response.ok && response.status === 200) {
      const got = await response.json();
      aims.innerHTML = got.lines;
      aimTable.innerHTML = got.words;
    } else {
      aims.innerHTML = "";
      aimTable.textContent = await response.text();
    }
    if (from === `${chart.dataset.query}&${where("ball")}`) {
      aims.classList.remove("stale");
      aimTable.classList.remove("stale");
    } else {
      drawAims();
    }
  };

  // Two choices from the ball side by side; what was chosen stays chosen while ball and aim are moved.
  const choosePair = () => {
    ["first", "second"].forEach((which) => {
      const kept = [...answer.querySelectorAll(`[name=${which}]`)].find((r) => r.value === pair[which]);
      if (kept) {
        kept.checked = true;
      }
    });
    showPair();
  };
  const showPair = () => {
    const one = answer.querySelector("[name=first]:checked");
    const two = answer.querySelector("[name=second]:checked");
    if (!one || !two) {
      return;
    }
    const query =
      `${chart.dataset.query}&${where("ball")}` +
      `&club=${encodeURIComponent(one.dataset.club)}&ax=${one.dataset.x}&ay=${one.dataset.y}` +
      `&club2=${encodeURIComponent(two.dataset.club)}&ax2=${two.dataset.x}&ay2=${two.dataset.y}`;
    ask(`/plan/hole/pair?${query}`, async (response) => {
      const got = await response.json();
      over.innerHTML = got.over;
      document.getElementById("pair").innerHTML = got.words;
      chance(query, document.getElementById("pair-chance"));
    });
  };
  const chance = async (query, words) => {
    const response = await fetch(`/plan/hole/chance?${query}&page=${page}`);
    if (response.status === 202) {
      return words.isConnected ? chance(query, words) : undefined; // still being worked out
    }
    if (response.status !== 204) {
      words.textContent = await response.text();
      words.dataset.ready = "yes";
    }
  };
  answer.addEventListener("change", (event) => {
    const radio = event.target.closest("[name=first], [name=second]");
    if (radio) {
      pair[radio.name] = radio.value;
      if (lines === "aims") {
        document.getElementById("no-lines").click();
      }
      showPair();
    }
  });

  const moved = {
    ball: () => {
      last = "ball";
      ask(`/plan/hole/spot?${chart.dataset.query}&${where("ball")}`, show);
    },
    aim: () => {
      last = "aim";
      ask(
        `/plan/hole/aim?${chart.dataset.query}&${where("ball")}&club=${encodeURIComponent(club)}` +
          `&ax=${handles.aim.x.toFixed(1)}&ay=${handles.aim.y.toFixed(1)}`,
        show,
      );
    },
    pin: () => {},
  };
  const dropped = {
    ball: () => {},
    aim: () => {},
    pin: () =>
      ask(`/plan/hole/location?${chart.dataset.query}&${where("pin")}`, async (response) => {
        go((await response.text()).split("?")[1]);
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
    const far = unit * (event.shiftKey ? 10 : 1);
    place(name, handles[name].x + step[0] * far, handles[name].y + step[1] * far);
    moved[name]();
    clearTimeout(settle);
    settle = setTimeout(dropped[name], 700);
  });

  answer.addEventListener("click", (event) => {
    const from = event.target.closest("[data-from]");
    if (from) {
      place("ball", ...from.dataset.from.split(" ").map(Number));
      moved.ball();
    }
    const shown = event.target.closest("[data-show]");
    if (shown) {
      club = shown.dataset.show;
      place("aim", Number(shown.dataset.x), Number(shown.dataset.y));
      moved.aim();
    }
    if (event.target.closest("[data-back]")) {
      stand = null;
      over.innerHTML = planOver;
      answer.innerHTML = planWords;
      club = svg.dataset.club;
      Object.entries(handles).forEach(([name, h]) => place(name, ...h.home));
      drawAims();
    }
  });

  if (stand?.frame === frame()) {
    // the same ground: ask again what was asked of the hole before
    club = stand.club;
    place("ball", ...stand.ball);
    place("aim", ...stand.aim);
    moved[stand.last]();
  }
  drawLines();
}

mount();
