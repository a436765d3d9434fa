/** What somebody needs who says yes or no: what it does, costs and holds, what speaks against it here, and what could be done instead. */
import type { Result, Workings } from '../../../quantities/workings.js';
import { quantityOf } from '../../../quantities/index.js';
import { resultText, unitOfResult } from '../../../reference/values.js';
import { duration, show } from '../../../units/format.js';
import { LOWER_HEATING_VALUE } from '../../../physics/constants.js';
import { gasVolume } from '../../../physics/gas-volume.js';
import { MOLES_PER_NORMAL_CUBIC_METRE } from '../../../quantities/of/energy.js';
import { ROOM } from '../../../quantities/surroundings.js';
import { DAY } from '../../../run/scenario.js';
import { amountOf, plus, shown, times, type Amount } from '../amount.js';
import { defineSection, heading, list, table, words, type Asked } from '../define.js';
import { BLANK, type Block, type Cell, type Row } from '../page.js';
import { asHeat, asImpact, HEAT_SOURCE, IMPACT_SOURCE } from '../plain-words.js';

const MOST_AGAINST = 10;
/** Of two equal numbers one may be larger in its last figure. */
const ALIKE = 1.0001;

export default defineSection({
    name: 'decide', title: 'To decide by', order: 10,
    lead: 'For whoever says yes or no: what the rig does, what it costs and holds, what speaks against it here, and what could be done instead.',
    make: a => [...job(a), ...against(a), ...figures(a), ...instead(a)],
});

const purposes: Readonly<Record<string, string>> = {
    balloon: 'to fill balloons', flame: 'a flame', torch: 'a torch', 'fuel-cell': 'a fuel cell', engine: 'an engine', store: 'to be stored', 'vent-only': 'none: it is let outdoors', test: 'a test',
};
const audiences: Readonly<Record<string, string>> = { alone: 'only its maker', others: 'other people', children: 'children', public: 'the public', sale: 'whoever buys it' };

function job({ workings }: Asked): Block[] {
    const [v] = workings.partsOf('purpose');
    const text = (key: string) => v?.given(key).entry?.value?.text;
    const sort = v?.word('sort');
    const audience = v?.word('audience');
    const rows: Row[] = [];
    const row = (name: string, value: string | undefined) => void (value && rows.push([name, value]));
    row('What the gas is for', sort && (purposes[sort] ?? sort));
    row('How much is wanted', text('wanted'));
    row('How it is used', [text('use-flow'), text('use-pressure') && `at ${text('use-pressure')} above the air`].filter(Boolean).join(' '));
    row('Who is near while it runs', audience && `${audiences[audience] ?? audience}${v.says('audience') === 'assumed' ? ' (not said, assumed)' : ''}`);
    row('Hours of running', workings.partsOf('routine')[0]?.given('hours').entry?.value?.text);
    return sort || text('wanted') ? table(['the job', 'as its description says'], rows) : [words('The description does not say what the gas is for, or how much of it is wanted: ask that first.', 'strong')];
}

// ---- figures, with the rig beside it that has no store ----------------------------------------------------------------

const first = (workings: Workings, kind: string, name: string): Result | undefined => {
    for (const v of workings.livePartsOf(kind)) {
        const r = v.result(name);
        if (r && r.value === r.value) return r;
    }
    return undefined;
};
/** J for a m³ of hydrogen (0 °C) at the plug, compressors counted; undefined where one of them is not known. */
function energyPerVolume(workings: Workings): Amount | undefined {
    const stack = first(workings, 'stack', 'plug-energy-per-volume');
    let sum = stack && amountOf(stack);
    for (const c of workings.livePartsOf('compressor')) {
        if (c.paths.on('oxygen').includes(c.name)) continue;
        const r = c.result('energy-per-volume');
        sum = sum && r && r.value === r.value ? plus(sum, amountOf(r)) : undefined;
    }
    return sum;
}
/** mol in a day of the stated hours. */
function madeInDay(workings: Workings): Amount | undefined {
    const r = first(workings, 'stack', 'gas-per-day');
    return r && times(amountOf(r), DAY);
}
/** J in a day. Of the stack the power is known more closely than what it makes, and what it makes cancels. */
function energyInDay(workings: Workings): Amount | undefined {
    const share = workings.partsOf('routine')[0]?.maybe('hours') ?? NaN;
    const [e, power, made] = [energyPerVolume(workings), first(workings, 'stack', 'plug-power'), madeInDay(workings)];
    if (!e || !power || !made || share !== share) return undefined;
    let sum = times(amountOf(power), share * DAY);
    for (const c of workings.livePartsOf('compressor')) if (!c.paths.on('oxygen').includes(c.name)) sum = plus(sum, times(amountOf(c.result('energy-per-volume')!), made.value / MOLES_PER_NORMAL_CUBIC_METRE));
    return sum;
}
/** Sum over all parts that hold hydrogen. */
function held(workings: Workings, name: string): Amount | undefined {
    let sum: Amount | undefined;
    for (const v of workings.allViews()) {
        if (v.pattern || v.declared?.statement || !quantityOf(v.kind).has(name) || v.paths.on('oxygen').includes(v.name)) continue;
        const r = v.result(name);
        if (r && r.value === r.value) sum = sum ? plus(sum, amountOf(r)) : amountOf(r);
    }
    return sum;
}
/** mol of hydrogen in everything that holds it, undefined where nothing does. */
function heldGas(workings: Workings): number | undefined {
    let sum = 0;
    for (const v of workings.allViews()) {
        if (v.pattern || v.paths.on('oxygen').includes(v.name)) continue;
        if (v.kind === 'cylinder') sum += v.maybeQ('stored-gas', 0);
        else if (v.kind === 'bag' || v.kind === 'gasometer') sum += v.maybe('volume', 0) / gasVolume(1, ROOM, workings.airPressure);
    }
    return sum > 0 ? sum : undefined;
}

function figures(a: Asked): Block[] {
    const columns = [a.workings, ...(a.lesser ? [a.lesser.workings] : [])];
    const rows: Row[] = [];
    const row = (name: Cell, of: (w: Workings) => Cell | undefined) => {
        const cells = columns.map(of);
        if (cells.some(c => c !== undefined)) rows.push([name, ...cells.map(c => c ?? 'not known')]);
    };
    row(['Hydrogen made in an hour', 'NL: a litre of dry gas at 0 °C and 101.325 kPa'], w => {
        const r = first(w, 'stack', 'hydrogen-rate');
        return r && resultText(r);
    });
    row('Hydrogen made in a day', w => {
        const made = madeInDay(w);
        return made && shown(made, 'NL');
    });
    row(['Electricity in a day', 'at the plug'], w => {
        const e = energyInDay(w);
        return e && shown(e, 'kWh');
    });
    row(['Electricity for a normal litre', `burnt, a litre gives back ${show(LOWER_HEATING_VALUE * MOLES_PER_NORMAL_CUBIC_METRE, 'Wh/L', 2).replace('/L', '')}`], w => {
        const e = energyPerVolume(w);
        return e && shown(e, 'Wh/L').replace('/L', '');
    });
    row(['Cost of a normal litre', 'electricity, and the parts over their life'], w => {
        const r = first(w, 'budget', 'gas-cost');
        return r && [`${shown(times(amountOf(r), 1e-3), '')} ${unitOfResult(r).split('/')[0]}`, `a thousand of them: ${resultText(r)}`];
    });
    row('Price of all parts', w => {
        const r = first(w, 'budget', 'parts-total');
        return r && r.value > 0 ? resultText(r) : undefined;
    });
    row(['Gas held when full', 'bags, bells and cylinders together'], w => {
        const gas = heldGas(w);
        return gas === undefined ? undefined : show(gas, 'NL');
    });
    row('Energy held when full', w => {
        const e = held(w, 'stored-energy');
        return e && [show(e.value, 'MJ'), asHeat(e.value)];
    });
    if (a.lesser) row(['Work in the pressure alone', 'whether or not it burns'], w => {
        const e = held(w, 'burst-energy');
        return e ? [show(e.value, 'kJ'), asImpact(e.value)] : w === columns[1] ? 'next to none' : undefined;
    });
    row(['Single failures that reach a hazard', 'see What if one thing breaks'], w => {
        if (typeof a.faults === 'string') return 'not followed';
        const reach = a.faults.faults.filter(x => x.outcome === 'hazard');
        if (w === columns[0]) return String(reach.length);
        const elsewhere = reach.filter(x => !a.lesser!.gone.has(x.part)).length;
        return [`${elsewhere || 'none'} of these begin${elsewhere > 1 ? '' : 's'} elsewhere`, 'not followed again without the store'];
    });
    return [
        heading('Figures'),
        ...table(['number', 'as described', ...(a.lesser ? ['the same without its store'] : [])], rows),
        ...(held(a.workings, 'stored-energy') ? [words(`${HEAT_SOURCE}${a.lesser ? ` ${IMPACT_SOURCE}` : ''}`, 'quiet')] : []),
        ...(a.lesser ? lesserWords(a, a.lesser.workings, a.lesser.gone.size) : [words(heldGas(a.workings) === undefined
            ? 'Nothing in the description holds gas: it is used, or let out, as it is made.'
            : 'Nothing here holds gas under pressure: there is no store to leave away but the bag or bell, and without that the gas would have to be used as it is made.')]),
    ];
}
/** What the rig without its store can do, and what cannot be told of it. */
function lesserWords(a: Asked, lesser: Workings, gone: number): Block[] {
    const [purpose] = a.workings.partsOf('purpose');
    const items: string[] = [];
    const text = (key: string) => purpose?.given(key).entry?.value?.text.trim() ?? '';
    const made = first(lesser, 'stack', 'hydrogen-rate')?.value ?? NaN;
    const flow = purpose?.maybe('use-flow') ?? NaN;
    const bag = [...lesser.livePartsOf('bag'), ...lesser.livePartsOf('gasometer')][0];
    const volume = bag ? bag.maybe('volume') / gasVolume(1, ROOM, a.workings.airPressure) : NaN;
    if (flow > made) items.push(volume === volume
        ? `Whoever uses the gas draws ${text('use-flow')}, more than is made: with ${bag.name} full that goes on for ${duration(volume / (flow - made))}, then it waits for the stack.`
        : `Whoever uses the gas draws ${text('use-flow')}, more than is made, and nothing holds any: it cannot be used like that.`);
    else if (flow <= made) items.push(`Whoever uses the gas draws ${text('use-flow')}, no more than is made: it can be used while the stack runs.`);
    const pressure = purpose?.maybe('use-pressure') ?? NaN;
    const presses = bag?.maybe('own-pressure') ?? NaN;
    if (pressure === pressure && presses === presses) items.push(pressure > presses
        ? `It is to be used at ${text('use-pressure')}; ${bag.name} presses with ${show(presses, 'kPa')}. Without a store the burner, or whatever uses it, must be another one.`
        : `It is to be used at ${text('use-pressure')}, which ${bag.name} gives by itself.`);
    const wanted = wantedOf(a);
    const day = madeInDay(lesser);
    if (wanted === wanted && day) items.push(wanted > day.value * ALIKE
        ? 'More is wanted than is made in the hours of running, with a store or without.'
        : 'As much is made as is wanted, with a store or without; without one it has to be used while, or soon after, it is made.');
    return [
        heading('The same rig without its store'),
        words(`${gone} parts are left away: what presses the gas, what holds it under pressure and lets it out again, and the devices that only serve these. What is left was worked out again by itself.`),
        ...list(items),
        words('Not worked out: what the empty places would cost to close, whether a new failure comes with the change, and what whoever uses the gas would have to change.', 'quiet'),
    ];
}
/** mol in a day as a mean, NaN if it is not said. */
function wantedOf({ workings }: Asked): number {
    const [purpose] = workings.partsOf('purpose');
    return purpose ? purpose.maybe('wanted') * purpose.maybe('wanted.count', 1) * DAY : NaN;
}

// ---- what speaks against it -------------------------------------------------------------------------------------------

function against(a: Asked): Block[] {
    const { findings } = a.analysis;
    const items: string[] = [];
    const grave = findings.filter(f => f.severity === 'error' || (f.guardsLife && f.severity === 'warning') || f.rule === 'error-muted').sort((f, g) => Number(g.severity === 'error') - Number(f.severity === 'error'));
    for (const f of grave.slice(0, MOST_AGAINST)) items.push(`${f.severity === 'error' ? 'Error: ' : ''}${f.message}`);
    if (grave.length > MOST_AGAINST) items.push(`And ${grave.length - MOST_AGAINST} more of this weight: see Findings.`);
    if (typeof a.faults !== 'string') {
        const usual = a.faults.healthy.hazards.length;
        const reach = a.faults.faults.filter(f => f.outcome === 'hazard');
        if (usual) items.push(`With nothing broken, the hottest day reaches ${usual === 1 ? 'a hazard' : `${usual} hazards`}: see What if one thing breaks.`);
        if (reach.length) items.push(`${reach.length === 1 ? 'One single failure reaches' : `${reach.length} single failures reach`} a hazard: ${reach.slice(0, 4).map(f => `${f.part} ${f.what}`).join(', ')}${reach.length > 4 ? ` and ${reach.length - 4} more` : ''}.`);
    }
    items.push(...ofSite(a), ...ofMoney(a));
    const open = notSaid(a);
    return [
        heading('What would make this a bad idea here'),
        ...(items.length ? list(items) : [words('Nothing in the description speaks against it by itself. That is no promise: this page knows the description, and nobody has looked at the rig, the place and the people.')]),
        ...(open.length ? [words(`Not said, and it would matter: ${open.join('; ')}.`)] : []),
        ...(typeof a.faults === 'string' ? [words(a.faults)] : []),
    ];
}
function ofSite({ workings }: Asked): string[] {
    const [site] = workings.partsOf('site');
    const [purpose] = workings.partsOf('purpose');
    const items: string[] = [];
    const says = (key: string) => (site?.said(key) ? site.word(key) : undefined);
    const place = says('place');
    if (place && ['cellar', 'attic', 'flat', 'room', 'garage'].includes(place)) items.push(`It stands in a ${place}: gas that gets out stays under its ceiling.`);
    if (site?.yes('people-above')) items.push('People live or sit above it.');
    if (site?.yes('attached-to-dwelling')) items.push('It shares a wall, a roof or a door with a home.');
    const audience = purpose?.word('audience');
    if (audience === 'children' || audience === 'public' || audience === 'sale') items.push(`It is meant to run near ${audiences[audience]}.`);
    const permission = says('permission');
    if (permission && permission !== 'given' && permission !== 'yes') items.push(`Permission: ${site!.given('permission').entry?.value?.text}.`);
    const insurer = says('insurer');
    if (insurer && insurer !== 'yes' && insurer !== 'given') items.push(`The insurer: ${site!.given('insurer').entry?.value?.text}.`);
    return items;
}
function ofMoney(a: Asked): string[] {
    const items: string[] = [];
    const cost = a.quantity('budget', 'gas-cost');
    const [budget] = a.workings.partsOf('budget');
    if (cost && (budget?.maybe('bought-gas') ?? NaN) < cost.value) items.push(`Bought gas costs less: ${budget!.given('bought-gas').entry?.value?.text ?? ''} against ${resultText(cost)}.`);
    const wanted = wantedOf(a);
    const made = madeInDay(a.workings);
    if (made && wanted > made.value * ALIKE) items.push(`It makes ${show(made.value, 'NL')} in a day of the hours that it runs; ${show(wanted, 'NL')} are wanted.`);
    return items;
}
function notSaid({ workings }: Asked): string[] {
    const [site] = workings.partsOf('site');
    const asked: readonly (readonly [string, string])[] = [
        ['place', 'what sort of place it is'], ['people-above', 'whether people live or sit above'], ['attached-to-dwelling', 'whether it adjoins a home'], ['neighbours', 'how far the next place is where others stay'],
        ['permission', 'whether whoever decides has given permission'], ['insurer', 'whether the insurer knows'], ['ignition-sources', 'what could light the gas'],
    ];
    return asked.filter(([key]) => !site?.said(key)).map(([, what]) => what);
}

// ---- instead ----------------------------------------------------------------------------------------------------------

function instead(a: Asked): Block[] {
    const [budget] = a.workings.partsOf('budget');
    const sort = a.workings.partsOf('purpose')[0]?.word('sort');
    const cost = a.quantity('budget', 'gas-cost');
    const volume = (budget?.maybe('hours-per-year') ?? NaN) * (a.quantity('stack', 'hydrogen-rate')?.value ?? NaN) / MOLES_PER_NORMAL_CUBIC_METRE;
    const rows: Row[] = [
        [['Hydrogen in a rented cylinder, a m3', 'price of a fill over its contents, rent and delivery of a year included'], budget?.given('bought-gas').entry?.value?.text ?? BLANK],
        ['Made with this rig, a m3', cost ? resultText(cost) : BLANK],
        [['Used in a year', Number.isFinite(volume) ? '' : 'hours of running in a year are not said'], Number.isFinite(volume) ? show(volume, 'm3') : BLANK],
        [['Rent of a cylinder for a year, and deposit', 'ask a dealer'], BLANK],
        [['Delivery, or the way there and back', 'may a full cylinder be carried in your car, and how?'], BLANK],
        [['Regulator, hose and flashback arrestor for it', 'ask for those listed for hydrogen'], BLANK],
        [['Where it may stand', 'ask landlord, insurer and fire service: the same questions as for this rig'], BLANK],
        // (M_air - M_He) / (M_air - M_H2) = (28.96 - 4.00) / (28.96 - 2.02), molar masses of IUPAC.
        ...(sort === 'balloon' ? [[['Helium for the same balloons', 'it does not burn, and lifts 7 % less; ask for price, rent and deposit'], BLANK] as const] : []),
    ];
    const e = energyPerVolume(a.workings);
    const share = e ? LOWER_HEATING_VALUE * MOLES_PER_NORMAL_CUBIC_METRE / e.value : NaN;
    const isHeat = sort === 'flame' || sort === 'torch' || sort === undefined;
    return [
        heading('Instead: bought gas, or none'),
        ...table(['what to ask for', 'answer'], rows),
        words(`Prices stand here only where the description has them; ask for the others and fill them in.${isHeat ? ` ${share === share ? `Of the electricity ${Math.round(100 * share)} % come back as heat of the flame: where` : 'Where'} heat alone is wanted, a heater on the same plug gives all of it.` : ''}`),
    ];
}
