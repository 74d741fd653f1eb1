// <room-sheet .room></room-sheet> is one room at a glance: its air, its range, what is on and why.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';
import {
  ago,
  besideRange,
  humidityFigure,
  temperature,
  temperatureValue,
  temperatureLimit,
  temperatureSign,
  told,
  units,
} from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { needsAttention, standing } from './judge.js';
import { partName } from './part-name.js';
import { words } from './words.js';

const text = words.rooms;

export class RoomSheet extends PageElement {
  static properties = {
    room: { attribute: false },
    /** Seconds since the room was as it says. */
    age: { type: Number },
  };

  constructor() {
    super();
    new Watch(this, units);
  }

  render() {
    const { room } = this;
    return html`<article class="room" data-attention=${needsAttention(room)}>
      <header>
        <h2><a href="/room/${encodeURIComponent(room.name)}">${room.name}</a></h2>
        ${room.purpose.toLowerCase() === room.name.toLowerCase() ? nothing : html`<p>${room.purpose}</p>`}
      </header>
      ${room.problem === null
        ? nothing
        : html`<p class="problem"><strong>${words.page.attention}:</strong> ${told(room.problem)}</p>`}
      <div class="air">
        ${this.#value({
          name: text.temperature,
          value: room.temperatureC,
          low: room.targetLowC,
          high: room.targetHighC,
          digits: 1,
          shown: temperatureValue,
          limit: temperatureLimit,
          sign: temperatureSign(),
          wrong: { low: text.tooCold, high: text.tooWarm },
          shape: 'fruit',
        })}
        ${this.#value({
          name: text.humidity,
          value: room.relativeHumidity,
          low: room.targetLowRh,
          high: room.targetHighRh,
          digits: 0,
          limit: humidityFigure,
          sign: '%',
          wrong: { low: text.tooDry, high: text.tooDamp },
          shape: 'drop',
        })}
      </div>
      <p class="aside pair">
        <span>${room.dewPointC === null ? text.noDewPoint : text.dewPoint(temperature(room.dewPointC))}</span>
        <span>${room.oldestReadingSeconds === null
          ? text.neverRead
          : text.read(ago(room.oldestReadingSeconds + this.age))}</span>
      </p>
      ${room.observeOnly ? html`<p class="aside">${text.observeOnly}</p>` : nothing}
      ${room.outputs.length === 0 ? nothing : this.#outputs(room)}
    </article>`;
  }

  #value({ name, value, low, high, digits, shown, limit, sign, wrong, shape }) {
    const how = standing(value, low, high);
    const range = low === null ? text.noTarget : text.range(limit(low), limit(high), sign);
    return html`<div class="value" data-standing=${how}>
      <p class="figure">
        <span class="visually-hidden">${name}</span>
        ${value === null ? html`<span class="unknown">${text.unknown}</span>` : bigFigure(besideRange(value, low, high, digits, shown), sign)}
      </p>
      ${low === null
        ? nothing
        : html`<shelf-gauge
            .value=${value}
            .low=${low}
            .high=${high}
            shape=${shape}
            label=${text.where[how](name, wrong[how])}
          ></shelf-gauge>`}
      <p class="range">${wrong[how] ? html`<strong>${wrong[how]}</strong> ` : nothing}${range}</p>
    </div>`;
  }

  #outputs({ name, outputs }) {
    return html`<ul class="outputs" aria-label=${text.outputs}>
      ${outputs.map(
        (output) =>
          html`<li data-on=${output.on}>
            <svg class="lamp" viewBox="0 0 12 12" aria-hidden="true"><circle cx="6" cy="6" r="4.5" /></svg>
            <span class="output">${partName(output.name, name)}</span>
            <span class="state">${output.on ? text.on : text.off}</span>
            <span class="reason">${told(output.reason)}</span>
          </li>`,
      )}
    </ul>`;
  }
}

/** The whole part large enough for two metres, the rest beside it. */
function bigFigure(figure, sign) {
  const [, whole, rest] = /^([^.,]*)(.*)$/.exec(figure);
  return html`<span class="whole">${whole}</span><span class="rest"
      ><span class="sign">${sign}</span><span class="fraction">${rest}</span></span
    >`;
}
