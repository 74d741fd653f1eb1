// <switch-dialog .output .longestMinutes> asks what to switch and for how long, names the end time
// on the button that does it, and says in the server's own words when it is refused. Sends `done`
// with the shed as it is then, or null when it was left.
import { html, nothing } from 'lit';
import { send } from '../lib/api.js';
import { live } from '../lib/live.js';
import { PageElement } from '../lib/page-element.js';
import { moment, told } from '../lib/units.js';
import { partName } from '../rooms/part-name.js';
import { words } from './words.js';

const text = words.shed.dialog;
const MINUTE_MS = 60_000;
const CHOICES = [20, 60, 180, 720];

export class SwitchDialog extends PageElement {
  static properties = {
    output: { attribute: false },
    longestMinutes: { attribute: false },
    on: { state: true },
    minutes: { state: true },
    refusal: { state: true },
    busy: { state: true },
  };

  constructor() {
    super();
    this.on = true;
    this.minutes = CHOICES[0];
    this.refusal = '';
    this.busy = false;
  }

  firstUpdated() {
    this.on = !this.output.on;
    this.querySelector('dialog').showModal();
  }

  render() {
    const { output, on } = this;
    const name = partName(output.name, output.room);
    const until = this.#until();
    return html`<dialog
      class="switch"
      aria-labelledby="switch-heading"
      @close=${() => this.#leave()}
    >
      <form method="dialog" @submit=${(event) => this.#send(event, until)}>
        <h2 id="switch-heading">${text.heading(name, output.room)}</h2>
        <fieldset>
          <legend>${text.what}</legend>
          ${[true, false].map((value) =>
            choice('on', value ? text.on : text.off, on === value, () => (this.on = value)),
          )}
        </fieldset>
        <fieldset>
          <legend>${text.howLong}</legend>
          ${CHOICES.filter((minutes) => minutes <= this.longestMinutes).map((minutes) =>
            choice(
              'minutes',
              text.minutes(minutes),
              this.minutes === minutes,
              () => (this.minutes = minutes),
            ),
          )}
        </fieldset>
        <p>${text.then(moment(until))}</p>
        ${this.refusal === ''
          ? nothing
          : html`<p class="problem" role="alert"><strong>${text.refused}</strong> ${told(this.refusal)}</p>`}
        <p class="ways">
          <button type="submit" class="does" ?disabled=${this.busy}>
            ${text.confirm(name, on, moment(until))}
          </button>
          <button type="button" @click=${() => this.querySelector('dialog').close()}>
            ${text.leave}
          </button>
        </p>
      </form>
    </dialog>`;
  }

  /** A whole minute of the shed's clock, so that what the button says is what is sent. */
  #until() {
    return Math.floor(live.shedMs / MINUTE_MS + this.minutes) * MINUTE_MS;
  }

  async #send(event, until) {
    event.preventDefault();
    this.busy = true;
    this.refusal = '';
    const { room, kind } = this.output;
    try {
      const order = { room, kind, on: this.on, until: new Date(until).toISOString() };
      this.#tell(await send('POST', '/api/shed/commands', order));
    } catch (failure) {
      this.refusal = failure.detail || words.live.why[failure.kind];
    }
    this.busy = false;
  }

  #leave() {
    this.#tell(null);
  }

  #tell(detail) {
    this.dispatchEvent(new CustomEvent('done', { detail }));
  }
}

const choice = (name, label, checked, choose) =>
  html`<label class="choice"
    ><input type="radio" name=${name} .checked=${checked} @change=${choose} /><span
      >${label}</span
    ></label
  >`;
