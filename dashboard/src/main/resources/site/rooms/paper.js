// How a chart is drawn in ink: the band as a tint between two rules, what is beyond it in the one
// colour for what is wrong, and a hatch where nothing was measured.

/** The value of one of the page's own variables. */
export const ink = (name) => getComputedStyle(document.documentElement).getPropertyValue(name).trim();

/**
 * A line through the values at their instants, which breaks off where it says nothing. A value holds until
 * then, and the last one is seen even if it is alone.
 */
export function linePath({ bbox, scales: { x, y } }, seconds, values) {
  const perSecond = bbox.width / (x.max - x.min);
  const perUnit = bbox.height / (y.max - y.min);
  const path = new Path2D();
  let [left, top] = [0, null];
  values.forEach((value, i) => {
    left = bbox.left + (seconds[i] - x.min) * perSecond;
    if (value !== null) {
      const next = bbox.top + (y.max - value) * perUnit;
      top === null ? path.moveTo(left, next) : path.lineTo(left, next);
      top = next;
    } else if (top !== null) {
      path.lineTo(left, top);
      top = null;
    }
  });
  if (top !== null) {
    path.lineTo(left + devicePixelRatio, top);
  }
  return path;
}

/** A line's ink: the page's own inside the band, the colour for what is wrong beyond its limits. */
export function lineStroke(u, band) {
  const own = ink('--ink');
  if (!band) {
    return own;
  }
  const { top, height } = u.bbox;
  const wrong = ink('--wrong');
  const stop = (value) =>
    Math.min(1, Math.max(0, (u.valToPos(value, 'y', true) - top) / height));
  const gradient = u.ctx.createLinearGradient(0, top, 0, top + height);
  const [high, low] = [stop(band.high), stop(band.low)];
  gradient.addColorStop(0, high > 0 ? wrong : own);
  gradient.addColorStop(high, high > 0 ? wrong : own);
  gradient.addColorStop(high, own);
  gradient.addColorStop(low, own);
  gradient.addColorStop(low, low < 1 ? wrong : own);
  gradient.addColorStop(1, low < 1 ? wrong : own);
  return gradient;
}

/** Tints the band, from when it holds. */
export function drawBand(u, band) {
  if (band) {
    const { left, top, width, bottom } = placeOf(band, u);
    fill(u, '--band', left, top, width, bottom - top);
  }
}

/** Rules the limits of the band, above the scale's own lines. */
export function drawLimits(u, band) {
  if (band) {
    const { left, top, width, bottom } = placeOf(band, u);
    fill(u, '--soft', left, top, width, devicePixelRatio);
    fill(u, '--soft', left, bottom, width, devicePixelRatio);
  }
}

/** On whole pixels: a rule between two of them is a smear. */
function placeOf({ low, high, from }, { bbox, valToPos }) {
  const row = (value) =>
    Math.round(Math.min(bbox.top + bbox.height, Math.max(bbox.top, valToPos(value, 'y', true))));
  const left = Math.max(bbox.left, valToPos(from, 'x', true));
  return {
    left,
    width: Math.max(0, bbox.left + bbox.width - left),
    top: row(high),
    bottom: row(low),
  };
}

function fill({ ctx }, colour, ...place) {
  ctx.save();
  ctx.fillStyle = ink(colour);
  ctx.fillRect(...place);
  ctx.restore();
}

/** Hatches a stretch of which nothing is known. */
export function drawHatch(u, fromSecond, toSecond) {
  const { ctx, bbox } = u;
  const left = Math.max(bbox.left, u.valToPos(fromSecond, 'x', true));
  const right = Math.min(bbox.left + bbox.width, u.valToPos(toSecond, 'x', true));
  if (right - left < 2) {
    return;
  }
  const step = 9 * devicePixelRatio;
  const place = [left, bbox.top, right - left, bbox.height];
  fill(u, '--paper', ...place);
  ctx.save();
  ctx.beginPath();
  ctx.rect(...place);
  ctx.clip();
  ctx.strokeStyle = ink('--line');
  ctx.lineWidth = devicePixelRatio;
  ctx.beginPath();
  for (let x = left - bbox.height; x < right; x += step) {
    ctx.moveTo(x, bbox.top + bbox.height);
    ctx.lineTo(x + bbox.height, bbox.top);
  }
  ctx.stroke();
  ctx.restore();
}
