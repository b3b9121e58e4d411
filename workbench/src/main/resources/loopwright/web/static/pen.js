// A pen that draws an area or a line corner by corner.
import { far } from "./shapes.js";

export class Pen {
  constructor(line, at, label) {
    this.line = line;
    this.at = at;
    this.label = label;
    this.corners = [];
  }

  enough() {
    return this.corners.length >= (this.line ? 2 : 3);
  }

  // Puts a corner; true, and none is put, where the place is the first (of an area) or the last one again.
  put(at, near) {
    const again = (corner) => corner && far(corner, at) < near;
    this.at = at;
    if (this.enough() && (again(this.corners.at(-1)) || (!this.line && again(this.corners[0])))) {
      return true;
    }
    if (!again(this.corners.at(-1))) {
      this.corners.push(at);
    }
    return false;
  }

  draw(layer, element, closer) {
    const words = (c) => c.map((v) => v.toFixed(1)).join(" ");
    const [x, y] = this.at;
    const d = 9 * closer;
    const shape = this.corners.length ? `M${[...this.corners, this.at].map(words).join("L")}` : "";
    layer.append(element("path", { class: "drawing", d: shape }));
    this.corners.forEach(([cx, cy]) => layer.append(element("circle", { class: "corner", cx, cy, r: 4 * closer })));
    layer.append(
      element("path", {
        class: "pen",
        d: `M${x - d} ${y}H${x + d}M${x} ${y - d}V${y + d}`,
        tabindex: 0,
        role: "button",
        "aria-label": this.label,
        "data-pen": "",
      }),
    );
  }
}
