// The pad of the green: the ball is moved, the answer follows.
const pad = document.querySelector(".pad");
if (pad) {
  const form = document.getElementById("putt");
  const answer = document.getElementById("answer");
  const ball = pad.querySelector(".ball");
  const unit = Number(pad.dataset.unit);
  const digits = Number(pad.dataset.digits);
  let wanted = false;
  let asking = false;

  const ask = async () => {
    wanted = true;
    if (asking) {
      return;
    }
    asking = true;
    while (wanted) {
      wanted = false;
      answer.classList.add("stale");
      const query = new URLSearchParams(new FormData(form));
      const response = await fetch(`/green/answer?${query}`);
      const text = await response.text();
      if (response.ok) {
        answer.innerHTML = text;
        history.replaceState(null, "", `/green?${query}`);
      } else {
        answer.textContent = text;
      }
      answer.classList.remove("stale");
    }
    asking = false;
  };
  const place = (x, y) => {
    ball.setAttribute("transform", `translate(${x.toFixed(1)} ${y.toFixed(1)})`);
    ball.setAttribute("aria-valuenow", (Math.hypot(x, y) / unit).toFixed(digits - 1));
    form.elements.right.value = (x / unit).toFixed(digits);
    form.elements.below.value = (y / unit).toFixed(digits);
    ask();
  };
  const point = (event) => {
    const p = new DOMPoint(event.clientX, event.clientY).matrixTransform(pad.getScreenCTM().inverse());
    return [Math.min(Math.max(p.x, -125), 125), Math.min(Math.max(p.y, -125), 125)];
  };
  let held = false;
  pad.addEventListener("pointerdown", (event) => {
    held = true;
    pad.setPointerCapture(event.pointerId);
    ball.focus();
    place(...point(event));
    event.preventDefault();
  });
  pad.addEventListener("pointermove", (event) => {
    if (held) {
      place(...point(event));
    }
  });
  pad.addEventListener("pointerup", () => (held = false));
  pad.addEventListener("pointercancel", () => (held = false));
  const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  ball.addEventListener("keydown", (event) => {
    const step = arrows[event.key];
    if (step) {
      event.preventDefault();
      const far = unit * Number(pad.dataset.step) * (event.shiftKey ? 5 : 1);
      place(Number(form.elements.right.value) * unit + step[0] * far, Number(form.elements.below.value) * unit + step[1] * far);
    }
  });
}
