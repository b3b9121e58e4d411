// The chart of a hole: handles are dragged or moved with the arrow keys; the server answers from the solved hole. Where
// the hole itself changes (wind, flag, locks) a first, coarser answer comes at once and the full one takes its place; the
// picture of before is marked until then, and stays in the hand.
import { renew } from "./renew.js";

// Keys that are pressed in a row are one move.
const KEYS_SETTLE_MILLIS = 350;

const part = document.getElementById("part");
const said = document.getElementById("said");
const page = Math.random().toString(36).slice(2);
const find = (css) => part.querySelector(css);
const findAll = (css) => [...part.querySelectorAll(css)];
const query = () => find(".chart").dataset.query;

// The plan's own picture and words, to come back to.
let plan = { over: "", words: "", club: "", homes: {} };
// Where the handles are now, the club that is aimed with, and what was asked last: "ball" or "aim"; empty on the plan.
const places = {};
let club = "";
let asked = "";
// What the hand is on: a handle, or "wind".
let held = null;
let grip = [0, 0];
// The lines that are shown, and the two choices that are compared: a club's name, or "yours".
let lines = "no-lines";
const pair = {};

// --- The hole solved anew -------------------------------------------------------------------------------------------

// Of several asked for in a row only the last counts.
let turn = 0;
let solving = false;

function mark() {
  find(".chart").classList.toggle("stale", solving || asking);
  find(".hole").classList.toggle("behind", solving);
  find(".hole").setAttribute("aria-busy", solving);
}

function wait() {
  solving = true;
  said.textContent = find(".behind-words").textContent;
  mark();
}

// Shows the hole for other inputs.
async function load(address, first) {
  const mine = ++turn;
  if (first) {
    wait();
  }
  let response;
  do {
    response = await fetch(`/plan/hole/part?${address}&page=${page}${first ? "&first=yes" : ""}`);
    // still being solved, or left by a question that another has overtaken
  } while (mine === turn && (response.status === 202 || response.status === 204));
  const text = await response.text();
  if (mine !== turn) {
    return;
  }
  if (!response.ok) {
    refuse(text);
    return;
  }
  solving = false;
  show(text);
  if (find(".chart").dataset.first === "true") {
    load(address, false);
  } else {
    said.textContent = find(".lead").textContent;
  }
}

// Goes to other inputs: the address follows, so that the page can be shared, reloaded and left by the back button.
function go(address) {
  history.pushState(null, "", `/plan/hole?${address}`);
  return load(address, true);
}
addEventListener("popstate", () => find(".chart") && load(location.search.slice(1), true));

// What was asked for cannot be had: why, in place of the words; the picture is still the one of before.
function refuse(words) {
  find("#answer").textContent = words;
  solving = false;
  mark();
}

// The fresh hole in place of the old one, but for what the reader has in hand or has laid over it.
function show(text) {
  const fresh = document.createElement("template");
  fresh.innerHTML = text;
  learn(fresh.content);
  const kept = [".contours", ".aims", "#aim-table"];
  kept.push(...Object.keys(places).filter((name) => name === held || (asked && name !== "pin")).map((n) => `.handle.${n}`));
  if (asked) {
    kept.push(".over", "#answer");
  }
  if (held === "wind" || windIdle) {
    kept.push(".wind");
  }
  kept.forEach((css) => fresh.content.querySelector(css).replaceWith(find(css).cloneNode(true)));
  const focus = document.activeElement;
  renew(part.firstElementChild, fresh.content.firstElementChild);
  if (!focus.isConnected) {
    find(".locks a").focus();
  }
  mount();
  if (asked) {
    questions[asked]();
  }
}

// --- The chart ------------------------------------------------------------------------------------------------------

// Reads what the plan says from markup of the server's.
function learn(root) {
  const homes = {};
  root.querySelectorAll(".handle").forEach((handle) => {
    homes[handle.dataset.handle] = handle.getAttribute("transform").match(/-?[\d.]+/g).map(Number);
  });
  plan = {
    over: root.querySelector(".over").innerHTML,
    words: root.querySelector("#answer").innerHTML,
    club: root.querySelector(".chart svg").dataset.club,
    homes,
  };
  Object.entries(homes).forEach(([name, home]) => {
    if (name !== held && (!asked || name === "pin")) {
      places[name] = home;
    }
  });
  if (!asked) {
    club = plan.club;
  }
}

function mount() {
  mark();
  drawLines();
  find(".chart").dataset.ready = "yes";
}

function place(name, x, y) {
  const svg = find(".chart svg");
  places[name] = [x, y];
  const handle = find(`.handle.${name}`);
  handle.setAttribute("transform", `translate(${x.toFixed(1)} ${y.toFixed(1)})`);
  const left = Math.hypot(x - places.pin[0], y - places.pin[1]) / Number(svg.dataset.length);
  handle.setAttribute("aria-valuenow", left.toFixed(0));
  handle.setAttribute("aria-valuetext", `${left.toFixed(0)} ${svg.dataset.unit} from the hole`);
}

const where = (name, x = "x", y = "y") => `${x}=${places[name][0].toFixed(1)}&${y}=${places[name][1].toFixed(1)}`;

// One question at a time, and of those that come meanwhile only the last.
let asking = false;
let next = null;
async function ask(address, then) {
  next = { address, then };
  if (asking) {
    return;
  }
  asking = true;
  try {
    while (next) {
      const now = next;
      next = null;
      mark();
      const response = await fetch(`${now.address}&page=${page}`);
      if (!response.ok) {
        find("#answer").textContent = await response.text();
      } else if (response.status !== 204) {
        now.then(await response.json());
      }
      if (!next) {
        asking = false;
        mark();
      }
    }
  } finally {
    asking = false;
  }
}

const questions = {
  ball: () => {
    asked = "ball";
    ask(`/plan/hole/spot?${query()}&${where("ball")}`, showAnswer);
  },
  aim: () => {
    asked = "aim";
    const aim = `club=${encodeURIComponent(club)}&${where("aim", "ax", "ay")}`;
    ask(`/plan/hole/aim?${query()}&${where("ball")}&${aim}`, showAnswer);
  },
  pin: () => {},
};

function showAnswer(got) {
  if (!asked) {
    return; // back on the plan since
  }
  const answer = find("#answer");
  find(".over").innerHTML = got.over;
  answer.innerHTML = got.words;
  if (got.aim) {
    club = got.club;
    if (held !== "aim") {
      place("aim", got.aim[0], got.aim[1]);
    }
  }
  said.textContent = answer.querySelector("h2").textContent;
  draw("aims");
  choosePair();
}

// The hole is cut where the flag was put down; where that cannot be, the flag goes back.
async function cut() {
  const mine = ++turn;
  wait();
  const response = await fetch(`/plan/hole/location?${query()}&${where("pin")}&page=${page}`);
  const text = await response.text();
  if (mine !== turn) {
    return;
  }
  if (response.ok) {
    go(text.split("?")[1]);
  } else {
    refuse(text);
    place("pin", ...plan.homes.pin);
  }
}

// --- Lines over the chart -------------------------------------------------------------------------------------------

// Worked out anew when what they hang on has changed, the old ones marked until then.
const drawn = { contours: {}, aims: {} };
const addresses = {
  contours: () => `/plan/hole/contours?${query()}`,
  aims: () => `/plan/hole/aims?${query()}&${where("ball")}`,
};

function drawLines() {
  find(".contours").classList.toggle("shown", lines === "contours");
  // what lies under the aims is the ground alone
  find(".aims").classList.toggle("shown", lines === "aims");
  find(".over").classList.toggle("covered", lines === "aims");
  find("#aim-table").hidden = lines !== "aims";
  draw(lines);
}

async function draw(name) {
  const known = drawn[name];
  const now = () => `${find(".chart").dataset.first} ${addresses[name]()}`;
  if (!known || lines !== name || known.of === now()) {
    return;
  }
  const marked = () => [find(`.${name}`), ...(name === "aims" ? [find("#aim-table")] : [])];
  marked().forEach((node) => node.classList.add("stale"));
  if (known.busy) {
    return;
  }
  known.busy = true;
  const of = now();
  const response = await fetch(`${addresses[name]()}&page=${page}`);
  const text = await response.text();
  known.busy = false;
  known.of = of;
  const got = response.status === 200 ? JSON.parse(text) : { lines: "", words: "" };
  find(`.${name}`).innerHTML = got.lines;
  if (name === "aims") {
    find("#aim-table").innerHTML = got.words;
  }
  if (response.status !== 200) {
    (name === "aims" ? find("#aim-table") : said).textContent = text;
  }
  if (of === now()) {
    marked().forEach((node) => node.classList.remove("stale"));
  } else {
    draw(name);
  }
}

// --- Two choices from the ball side by side; what was chosen stays chosen while ball and aim are moved ---------------

function choosePair() {
  ["first", "second"].forEach((which) => {
    const kept = findAll(`#answer [name=${which}]`).find((r) => r.value === pair[which]);
    if (kept) {
      kept.checked = true;
    }
  });
  showPair();
}

function showPair() {
  const one = find("#answer [name=first]:checked");
  const two = find("#answer [name=second]:checked");
  if (!one || !two) {
    return;
  }
  const both =
    `${query()}&${where("ball")}` +
    `&club=${encodeURIComponent(one.dataset.club)}&ax=${one.dataset.x}&ay=${one.dataset.y}` +
    `&club2=${encodeURIComponent(two.dataset.club)}&ax2=${two.dataset.x}&ay2=${two.dataset.y}`;
  ask(`/plan/hole/pair?${both}`, (got) => {
    if (!find("#pair")) {
      return;
    }
    find(".over").innerHTML = got.over;
    find("#pair").innerHTML = got.words;
    chance(both, find("#pair-chance"));
  });
}

async function chance(both, words) {
  const response = await fetch(`/plan/hole/chance?${both}&page=${page}`);
  if (response.status === 202) {
    return words.isConnected ? chance(both, words) : undefined; // still being worked out
  }
  if (response.status !== 204) {
    words.textContent = await response.text();
    words.dataset.ready = "yes";
  }
}

// --- The wind: the arrow is turned by dragging or with the arrow keys, speed and bearing can be typed ----------------

const speed = () => Number(find("#wind-speed").value);

function turnWind(degrees) {
  const dial = find(".dial");
  const bearing = ((Math.round(degrees) % 360) + 360) % 360;
  find("#wind-from").value = bearing;
  dial.setAttribute("aria-valuenow", bearing);
  find(".dial .blow").setAttribute("transform", `rotate(${Number(dial.dataset.north) + bearing + 180})`);
  dial.classList.toggle("still", speed() === 0);
}

// A still day is the same whatever the arrow says.
let windIdle = 0;
function blow(wait, evenStill) {
  clearTimeout(windIdle);
  if (speed() === 0 && !evenStill) {
    return;
  }
  windIdle = setTimeout(() => {
    windIdle = 0;
    const box = find(".wind");
    const address = new URLSearchParams(query());
    ["wind", "from", "gust"].forEach((name) => address.delete(name));
    const metresPerSecond = Math.round(speed() * Number(box.dataset.perUnit) * 1e6) / 1e6;
    if (metresPerSecond > 0) {
      address.set("wind", metresPerSecond);
      address.set("from", find("#wind-from").value);
      const gust = Number(box.dataset.gust) * metresPerSecond;
      if (gust > metresPerSecond) {
        address.set("gust", gust);
      }
    }
    go(address.toString());
  }, wait);
}

function bearingOf(event) {
  const dial = find(".dial");
  const r = dial.getBoundingClientRect();
  const x = event.clientX - r.left - r.width / 2;
  const y = event.clientY - r.top - r.height / 2;
  return (Math.atan2(x, -y) * 180) / Math.PI - Number(dial.dataset.north) - 180;
}

// --- Hands and keys -------------------------------------------------------------------------------------------------

function point(event) {
  const svg = find(".chart svg");
  const p = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  const box = svg.viewBox.baseVal;
  return [Math.min(Math.max(p.x, 0), box.width), Math.min(Math.max(p.y, 0), box.height)];
}

function onPointerDown(event) {
  const handle = event.target.closest(".handle");
  const grabbed = handle ?? event.target.closest(".dial");
  if (!grabbed) {
    return;
  }
  event.preventDefault();
  grabbed.focus({ preventScroll: true });
  (grabbed.closest(".chart svg") ?? grabbed).setPointerCapture(event.pointerId);
  if (handle) {
    held = handle.dataset.handle;
    const [x, y] = point(event);
    grip = [places[held][0] - x, places[held][1] - y];
  } else {
    held = "wind";
    turnWind(bearingOf(event));
  }
}

function onPointerMove(event) {
  if (held === "wind") {
    turnWind(bearingOf(event));
  } else if (held) {
    const [x, y] = point(event);
    place(held, x + grip[0], y + grip[1]);
    questions[held]();
  }
}

function onRelease() {
  const what = held;
  held = null;
  if (what === "wind") {
    blow(0);
  } else if (what === "pin") {
    cut();
  }
}

const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
const turns = { ArrowLeft: -5, ArrowDown: -5, ArrowRight: 5, ArrowUp: 5, PageDown: -45, PageUp: 45 };
let keysIdle = 0;
function onKeyDown(event) {
  const handle = event.target.closest(".handle");
  const step = handle && arrows[event.key];
  if (step) {
    event.preventDefault();
    const name = handle.dataset.handle;
    const far = Number(find(".chart svg").dataset.length) * (event.shiftKey ? 10 : 1);
    place(name, places[name][0] + step[0] * far, places[name][1] + step[1] * far);
    questions[name]();
    clearTimeout(keysIdle);
    keysIdle = name === "pin" ? setTimeout(cut, KEYS_SETTLE_MILLIS) : 0;
  } else if (event.target.closest(".dial") && turns[event.key]) {
    event.preventDefault();
    turnWind(Number(find("#wind-from").value) + turns[event.key]);
    blow(KEYS_SETTLE_MILLIS);
  }
}

function onClick(event) {
  const link = event.target.closest("a.resolve");
  const from = event.target.closest("#answer [data-from]");
  const shown = event.target.closest("#answer [data-show]");
  if (link) {
    event.preventDefault();
    go(link.search.slice(1));
  } else if (from) {
    place("ball", ...from.dataset.from.split(" ").map(Number));
    questions.ball();
  } else if (shown) {
    club = shown.dataset.show;
    place("aim", Number(shown.dataset.x), Number(shown.dataset.y));
    questions.aim();
  } else if (event.target.closest("#answer [data-back]")) {
    asked = "";
    next = null;
    club = plan.club;
    find(".over").innerHTML = plan.over;
    find("#answer").innerHTML = plan.words;
    Object.entries(plan.homes).forEach(([name, home]) => place(name, ...home));
    draw("aims");
  }
}

function onChange(event) {
  const { id, name, value } = event.target;
  if (name === "lines") {
    lines = id;
    drawLines();
  } else if (name === "first" || name === "second") {
    pair[name] = value;
    if (lines === "aims") {
      find("#no-lines").click();
    }
    showPair();
  } else if (id === "wind-speed" || id === "wind-from") {
    turnWind(Number(find("#wind-from").value));
    blow(0, id === "wind-speed");
  }
}

part.addEventListener("pointerdown", onPointerDown);
part.addEventListener("pointermove", onPointerMove);
part.addEventListener("pointerup", onRelease);
part.addEventListener("pointercancel", onRelease);
part.addEventListener("keydown", onKeyDown);
part.addEventListener("click", onClick);
part.addEventListener("change", onChange);

if (find(".chart")) {
  learn(part);
  // the browser fills forms in anew when it loads a page again
  lines = find("[name=lines]:checked").id;
  mount();
  if (find(".chart").dataset.first === "true") {
    load(location.search.slice(1), false);
  }
}
