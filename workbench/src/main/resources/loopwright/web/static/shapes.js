// Geometry of what is drawn on a chart, in the chart's own points.
export const far = (a, b) => Math.hypot(a[0] - b[0], a[1] - b[1]);

const onEdge = (at, a, b) => {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const length = dx * dx + dy * dy;
  const t = length > 0 ? ((at[0] - a[0]) * dx + (at[1] - a[1]) * dy) / length : 0;
  const along = Math.min(Math.max(t, 0), 1);
  return [a[0] + along * dx, a[1] + along * dy];
};

// The nearest corner or place within reach; where none is, the nearest place on an edge; else the place itself.
export function snapped(at, rings, places, reach) {
  let best = at;
  let least = reach;
  const look = (p) => {
    const d = far(p, at);
    if (d < least) {
      least = d;
      best = [...p];
    }
  };
  rings.flat().forEach(look);
  places.forEach(look);
  if (best === at) {
    rings.forEach((ring) => ring.forEach((c, i) => look(onEdge(at, c, ring[(i + 1) % ring.length]))));
  }
  return best;
}
