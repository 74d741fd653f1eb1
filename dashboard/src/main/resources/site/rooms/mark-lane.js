// The lane above a chart in which marks are drawn: alarms as bars with a post where they began,
// lots as a triangle that points into the room or out of it.
import { ink } from './paper.js';

/** How much room the lane needs above the chart, in pixels of the page. */
export const LANE_HEIGHT = 40;

const ALARM_UP = 26;
const MOVE_UP = 10;
const HALF = 6;

export function drawMarks(u, marks) {
  const { ctx, bbox } = u;
  const px = devicePixelRatio;
  const [least, most] = [bbox.left, bbox.left + bbox.width];
  const x = (ms) => Math.min(most, Math.max(least, u.valToPos(ms / 1000, 'x', true)));
  ctx.save();
  marks.forEach(({ kind, fromMs, toMs, wakes }) => {
    if (kind === 'alarm') {
      const y = bbox.top - ALARM_UP * px;
      const tall = (wakes ? 6 : 3) * px;
      ctx.fillStyle = ink('--wrong');
      ctx.fillRect(x(fromMs), y - tall / 2, Math.max(3 * px, x(toMs) - x(fromMs)), tall);
      if (u.valToPos(fromMs / 1000, 'x') >= 0) {
        ctx.fillRect(x(fromMs), y - HALF * px, 2 * px, 2 * HALF * px);
      }
    } else {
      const y = bbox.top - MOVE_UP * px;
      const base = (kind === 'in' ? -5 : 5) * px;
      ctx.fillStyle = ink('--ink');
      ctx.beginPath();
      ctx.moveTo(x(fromMs) - HALF * px, y + base);
      ctx.lineTo(x(fromMs) + HALF * px, y + base);
      ctx.lineTo(x(fromMs), y - base);
      ctx.fill();
    }
  });
  ctx.restore();
}

/** The moment of the mark nearest to one that was tapped; that moment itself where none is near. */
export function nearestMark(marks, ms, slackMs) {
  const away = (mark) => Math.max(mark.fromMs - ms, ms - mark.toMs, 0);
  const near = marks
    .filter((mark) => away(mark) <= slackMs)
    .sort((a, b) => away(a) - away(b) || b.fromMs - a.fromMs);
  return near.length === 0 ? ms : Math.min(near[0].toMs, Math.max(near[0].fromMs, ms));
}
