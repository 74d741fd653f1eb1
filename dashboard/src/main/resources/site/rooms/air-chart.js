// <air-chart .chart .cursorMs zooms> draws one quantity of a room over time on paper: its band, its
// lines, a hatch where nothing was measured, and above it a lane of marks. Sends `look` (a moment) and,
// where it zooms, `zoom` (a stretch that mouse or finger dragged out).
import { LitElement } from 'lit';
import { once } from '../lib/once.js';
import { runScript } from '../lib/own-script.js';
import { seen } from '../lib/seen.js';
import { axisFigure, farmDay, farmTime, isFarmMidnight } from '../lib/units.js';
import { LANE_HEIGHT, drawMarks, nearestMark } from './mark-lane.js';
import { drawBand, drawHatch, drawLimits, ink, linePath, lineStroke } from './paper.js';

export const AXIS_WIDTH = 46;
const RIGHT_EDGE = 24;

/** How near to a mark a fingertip must come down, in pixels. */
export const FINGER_PX = 16;

/** A finger that moves less than this has tapped. */
const DRAG_PX = 12;
const SHORTEST_ZOOM_PX = 24;

const DASHES = { solid: [], dotted: [2, 4], dashed: [8, 5], chain: [14, 4, 2, 4] };
const INKS = { chain: '--ink', free: '--ink' };
const DAY_SECONDS = 86_400;

/** From rule to rule of a scale: what can be written with one decimal at most, and is read at a glance. */
const STEPS = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50];

/** The library that draws comes with the first chart; its small form is a script, not a module. */
export const fetchPlots = once(async () => {
  await runScript(import.meta.resolve('uplot'));
  return globalThis.uPlot;
});

/** Charts take turns, so that one is seen before the next is drawn. */
let lastSeen = Promise.resolve();
const turn = () => {
  const own = lastSeen;
  lastSeen = own.then(seen);
  return own;
};

export class AirChart extends LitElement {
  static properties = {
    /** As `charts.js` makes it; a new one is drawn afresh. */
    chart: { attribute: false },
    cursorMs: { attribute: false },
    zooms: { type: Boolean },
  };

  #plot = null;
  #sizes = new ResizeObserver(() => this.#resize());
  #redraw = () => this.#draw();
  #dark = matchMedia('(prefers-color-scheme: dark)');
  /** Where a finger came down, in pixels of the chart, and whether it drags; null for none. */
  #finger = null;

  createRenderRoot() {
    return this; // The library's style sheet does not enter a shadow root.
  }

  connectedCallback() {
    super.connectedCallback();
    this.#sizes.observe(this);
    this.#dark.addEventListener('change', this.#redraw);
    this.addEventListener('pointerdown', this.#down);
    this.addEventListener('pointermove', this.#move);
    this.addEventListener('pointerup', this.#up);
    this.addEventListener('pointercancel', this.#cancel);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.#sizes.disconnect();
    this.#dark.removeEventListener('change', this.#redraw);
    this.#plot?.destroy();
    this.#plot = null;
  }

  updated(changed) {
    if (changed.has('chart')) {
      this.#draw();
    }
    this.#mark();
  }

  /** Rules a line through the moment looked at. */
  #mark() {
    if (this.#plot !== null && this.cursorMs !== null) {
      const left = this.#plot.valToPos(this.cursorMs / 1000, 'x');
      this.#plot.setCursor({ left, top: 10 }, false);
    }
  }

  async #draw() {
    const Plot = await fetchPlots();
    await turn();
    this.#plot?.destroy();
    this.#plot = null;
    if (this.chart && this.isConnected) {
      const { fromMs, toMs, lines } = this.chart;
      // Lines draw themselves, each at its own instants: the library's table holds the ends of time alone.
      const table = [[fromMs / 1000, toMs / 1000], ...lines.map(() => [null, null])];
      this.#plot = new Plot(this.#options(Plot), table, this);
    }
  }

  #resize() {
    const width = Math.floor(this.clientWidth);
    if (this.#plot !== null && width > 0 && width !== this.#plot.width) {
      this.#plot.setSize({ width, height: this.#plot.height });
    }
  }

  #options(Plot) {
    const { lines, range, band, gaps, fromMs, toMs, zone, height, marks } = this.chart;
    const axis = { stroke: ink('--soft'), font: ink('--axis-font'), ticks: { show: false } };
    const grid = { stroke: ink('--line'), width: 1 };
    return {
      width: Math.max(200, Math.floor(this.clientWidth)),
      height: height + (marks.length > 0 ? LANE_HEIGHT : 0),
      padding: [marks.length > 0 ? LANE_HEIGHT : 10, RIGHT_EDGE, 0, 0],
      legend: { show: false },
      tzDate: (seconds) => Plot.tzDate(new Date(seconds * 1000), zone),
      scales: {
        x: { min: fromMs / 1000, max: toMs / 1000 },
        y: { range },
      },
      axes: [
        {
          ...axis,
          grid: { show: false },
          size: 30,
          space: 70,
          values: (_, splits, __, ___, step) =>
            splits.map((s) =>
              step >= DAY_SECONDS || isFarmMidnight(s * 1000, zone)
                ? farmDay(s * 1000, zone)
                : farmTime(s * 1000, zone),
            ),
        },
        { ...axis, grid, size: AXIS_WIDTH, space: 34, incrs: STEPS, values: figures },
      ],
      series: [
        {},
        ...lines.map(({ style, seconds, values }) => ({
          paths: (u) => ({ stroke: linePath(u, seconds, values) }),
          stroke: style === 'solid' ? (u) => lineStroke(u, band) : ink(INKS[style] ?? '--soft'),
          width: style === 'dotted' || style === 'dashed' ? 1.5 : 2,
          dash: DASHES[style],
          points: { show: false },
        })),
      ],
      cursor: {
        y: false,
        points: { show: false },
        drag: { x: true, y: false, setScale: false, dist: 8 },
      },
      hooks: {
        drawClear: [
          (u) => {
            drawBand(u, band);
            gaps.forEach(([from, to]) => drawHatch(u, from, to));
          },
        ],
        drawAxes: [(u) => drawLimits(u, band)],
        draw: [(u) => drawMarks(u, marks)],
        ready: [() => this.#mark()],
        setCursor: [(u) => this.#look(u)],
        setSelect: [(u) => this.#zoom(u)],
      },
    };
  }

  #look(u) {
    const { left } = u.cursor;
    if (left >= 0 && u.cursor.event) {
      this.#tell('look', u.posToVal(left, 'x') * 1000);
    }
  }

  #zoom(u, shortest = 8) {
    const { left, width } = u.select;
    if (this.zooms && width > shortest) {
      const fromMs = u.posToVal(left, 'x') * 1000;
      this.#tell('zoom', { fromMs, toMs: u.posToVal(left + width, 'x') * 1000 });
    }
    u.setSelect({ left: 0, width: 0, top: 0, height: 0 }, false);
  }

  #down = (event) => {
    if (this.#plot !== null) {
      const isFinger = event.pointerType !== 'mouse';
      this.#finger = isFinger && event.isPrimary ? { left: this.#left(event), isDragging: false } : null;
      if (isFinger || event.target.closest('.u-over') === null) {
        this.#lookUnder(event);
      }
    }
  };

  /** A finger that goes sideways drags out a stretch; one that goes up or down moves the page. */
  #move = (event) => {
    if (this.#finger === null || !event.isPrimary || this.#plot === null) {
      return;
    }
    const { left } = this.#finger;
    const now = this.#left(event);
    this.#finger.isDragging ||= this.zooms && Math.abs(now - left) > DRAG_PX;
    if (this.#finger.isDragging) {
      const height = this.#plot.over.clientHeight;
      const sides = { left: Math.min(left, now), width: Math.abs(now - left) };
      this.#plot.setSelect({ ...sides, top: 0, height }, false);
    }
    this.#lookUnder(event);
  };

  #up = () => {
    const isDragging = this.#finger?.isDragging;
    this.#finger = null;
    if (isDragging && this.#plot !== null) {
      this.#zoom(this.#plot, SHORTEST_ZOOM_PX);
    }
  };

  #cancel = () => {
    this.#finger = null;
    this.#plot?.setSelect({ left: 0, width: 0, top: 0, height: 0 }, false);
  };

  /** Where a pointer is, in pixels of the chart's own width. */
  #left({ clientX }) {
    const { left, width } = this.#plot.over.getBoundingClientRect();
    return Math.min(width, Math.max(0, clientX - left));
  }

  /** In the lane of marks the nearest mark is meant. */
  #lookUnder(event) {
    const u = this.#plot;
    const left = this.#left(event);
    const ms = u.posToVal(left, 'x') * 1000;
    const isInLane = event.clientY < u.over.getBoundingClientRect().top;
    const slackMs = (u.posToVal(left + FINGER_PX, 'x') - u.posToVal(left, 'x')) * 1000;
    this.#tell('look', isInLane ? nearestMark(this.chart.marks, ms, slackMs) : ms);
  }

  #tell(name, detail) {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

/** Tenths only where the rules are closer than a whole degree. */
const figures = (_, splits) =>
  splits.map((value) => axisFigure(value, splits[1] - splits[0] < 1 ? 1 : 0));
