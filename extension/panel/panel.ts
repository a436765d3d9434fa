// The page of the panel. It draws what it is told and tells what was turned; it knows neither the editor nor the server.
import { html, nothing, render, type TemplateResult } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { repeat } from 'lit-html/directives/repeat.js';
import type { FromPage, Panel, PanelFinding, PanelNumber, PanelTurn, ToPage } from './messages.js';
import { begin, pictureOf, remembered, settle } from './picture.js';

declare function acquireVsCodeApi(): { postMessage(message: FromPage): void; getState(): unknown; setState(state: unknown): void };
const editor = acquireVsCodeApi();
const say = (message: FromPage) => editor.postMessage(message);
const root = document.getElementById('panel')!;

let panel: Panel | null | undefined;
/** What the hand has just done, shown before the rig is worked out. */
let hand: { name: string; to: number } | undefined;

/** The theme as the palettes are called. */
function theme(): string {
    const list = document.body.classList;
    if (list.contains('vscode-high-contrast-light')) return 'sharp-light';
    if (list.contains('vscode-high-contrast')) return 'sharp';
    return list.contains('vscode-light') ? 'light' : 'dark';
}

/** What is behind the page, as #rrggbb: lines and symbols of a picture are drawn on it. */
function paper(): string {
    const parts = getComputedStyle(document.body).backgroundColor.match(/[\d.]+/g)?.slice(0, 3).map(Number) ?? [];
    return parts.length === 3 ? `#${parts.map(n => Math.round(n).toString(16).padStart(2, '0')).join('')}` : '';
}
function turn(t: PanelTurn, to: number): void {
    const within = Math.min(t.high, Math.max(t.low, to));
    hand = { name: t.name, to: Number(within.toPrecision(12)) };
    say({ sort: 'turn', turning: hand });
    draw();
}
const [figures, unitOf] = [(text: string) => text.split(' ')[0], (text: string) => text.split(' ').slice(1).join(' ')];

const number = (n: PanelNumber): TemplateResult => html`
    <tr title=${n.meaning} class=${n.was === undefined ? '' : 'moved'}>
        <th scope="row">${n.label}</th>
        <td class="figure">${figures(n.value)}</td>
        <td class="unit">${unitOf(n.value)}</td>
        <td class="spread">${n.spread}</td>
        <td class="was">${n.was === undefined ? nothing : html`<span aria-label="as the text stands">was ${n.was}</span>`}</td>
    </tr>`;
const table = (name: string, numbers: readonly PanelNumber[]) => html`
    <table aria-label=${name}><tbody>${repeat(numbers, n => n.name, number)}</tbody></table>`;

function knob(t: PanelTurn): TemplateResult {
    const at = hand?.name === t.name ? hand.to : t.now;
    const turned = panel?.turned?.name === t.name || hand?.name === t.name;
    return html`
    <div class="turn ${turned ? 'turned' : ''}">
        <label for=${`turn-${t.name}`} title=${t.meaning}>${t.label}</label>
        <output for=${`turn-${t.name}`}>${hand?.name === t.name ? `${hand.to}${t.unit ? ` ${t.unit}` : ''}` : t.text}</output>
        <input id=${`turn-${t.name}`} type="range" min=${t.low} max=${t.high} step=${t.step} .value=${live(String(at))}
            aria-valuetext=${`${at} ${t.unit}`.trim()}
            @input=${(e: Event) => turn(t, Number((e.target as HTMLInputElement).value))}
            @wheel=${(e: WheelEvent) => {
                // Only what has the focus is turned by the wheel, so that the page can be scrolled past it.
                if (document.activeElement !== e.target) return;
                e.preventDefault();
                turn(t, at - Math.sign(e.deltaY) * t.step);
            }}>
    </div>`;
}
const finding = (f: PanelFinding): TemplateResult => html`
    <li class=${`${f.severity} ${f.sort}`}>
        <span class="mark" aria-hidden="true">${f.severity === 'error' ? '✕' : '▲'}</span>
        <span class="words"><b>${f.sort === 'new' ? 'New ' : f.sort === 'gone' ? 'Gone: ' : ''}${f.sort === 'gone' ? nothing : f.severity}</b> ${f.message}
            <button class="link" @click=${() => say({ sort: 'goTo', uri: f.uri, line: f.line })}>line ${f.line + 1}</button>
            <button class="link" @click=${() => say({ sort: 'explain', rule: f.rule })}>${f.rule}</button></span>
    </li>`;

function page(p: Panel): TemplateResult {
    const turned = p.turned;
    const writes = turned && p.turns.find(t => t.name === turned.name)?.writes;
    return html`
    <header>
        <h1>${p.title}</h1>
        <p class="state" role="status">${turned ? html`As if <b>${turned.name}</b> were <b>${turned.text}</b>` : html`As the text stands · ${p.stage}`}</p>
        <p class="hands">
            <button ?disabled=${!turned || !writes} @click=${() => hand && say({ sort: 'write', turning: hand })}>Write it into the text</button>
            <button ?disabled=${!turned} @click=${() => { hand = undefined; say({ sort: 'release' }); }}>Let it go</button>
            ${turned && !writes ? html`<span class="quiet">A figure off a plate is looked at, not written.</span>` : nothing}
        </p>
    </header>
    ${p.picture || p.pictures.length ? html`
    <section class="picture">
        ${p.pictures.length > 1 ? html`<label>Picture <select @change=${(e: Event) => say({ sort: 'picture', name: (e.target as HTMLSelectElement).value })}>
            ${p.pictures.map(x => html`<option value=${x.name} .selected=${live(x.name === p.picture?.name)}>${x.title}</option>`)}</select></label>` : nothing}
        ${p.picture ? pictureOf(p.picture) : nothing}
    </section>` : nothing}
    <section>
        <h2>${p.part ? html`Turn a number of ${p.part.name}` : 'Nothing to turn yet'}</h2>
        ${p.turns.length ? repeat(p.turns, t => t.name, knob) : html`<p class="quiet">No plain number stands in this part. Set the cursor into another.</p>`}
    </section>
    <section><h2>The rig</h2>${p.key.length ? table('Numbers of the rig', p.key) : html`<p class="quiet">Nothing is known yet.</p>`}</section>
    ${p.part && p.here.length ? html`<section><h2>${p.part.name}${p.part.name === p.part.kind ? nothing : html` <small>${p.part.kind}</small>`}</h2>${table(`Numbers of ${p.part.name}`, p.here)}</section>` : nothing}
    <section>
        <h2>Findings</h2>
        ${p.findings.length ? html`<ul>${repeat(p.findings, f => `${f.sort} ${f.rule} ${f.line} ${f.message}`, finding)}</ul>` : html`<p class="quiet">No error and no warning${turned ? ' that way' : ''}; that is no promise.</p>`}
        ${p.hints ? html`<p class="quiet">And ${p.hints} ${p.hints === 1 ? 'hint' : 'hints'} in the text.</p>` : nothing}
    </section>
    <footer>${p.caution}</footer>`;
}
function draw(look = false): void {
    render(panel ? page(panel) : html`<p class="quiet">${panel === null ? 'Set the cursor into a rig.' : 'Looking at the rig…'}</p>`, root);
    settle(root, panel?.picture, panel?.at, look);
}

window.addEventListener('message', (e: MessageEvent<ToPage>) => {
    if (e.data.sort === 'view') {
        remembered(e.data.view);
        return;
    }
    panel = e.data.panel;
    // The hand is ahead of the rig until it lets go, or the text has become what it turned to.
    if (!panel?.turned) hand = undefined;
    draw(e.data.look);
});
begin({ changed: view => say({ sort: 'view', view }), again: () => draw(), toPart: name => say({ sort: 'part', name }) });
// The editor writes its colours into the style of the page.
const themes = new MutationObserver(() => say({ sort: 'theme', theme: theme(), paper: paper() }));
themes.observe(document.body, { attributes: true, attributeFilter: ['class'] });
themes.observe(document.documentElement, { attributes: true, attributeFilter: ['style'] });
draw();
say({ sort: 'ready', theme: theme(), paper: paper() });
