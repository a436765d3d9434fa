import { append } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { freeName } from '../../path-fixes.js';
import { missing } from '../../stage.js';
import { show } from '../../../units/format.js';
import { sealDepthAbove, WATER_COLUMN } from '../../relief.js';

export default defineRule({
    name: 'no-passive-low-pressure-relief',
    family: 'buffer',
    severity: 'error',
    summary: 'Something on the way of a gas can shut, and nothing lets the gas out by itself.',
    why: 'A kinked hose, a shut valve or a full bag then takes that side to the bubble point of the separators, and the gases mix. Switches are no relief.',
    source: 'Directive 2014/68/EU Annex I 2.11 and ISO 22734, from memory; common practice, no source',
    guardsLife: true,
    on: 'stack',
    check(v, tell) {
        const kind = (n: string) => v.other(n)?.kind ?? '';
        for (const gas of ['hydrogen', 'oxygen'] as const) {
            if (!v.paths.from(v.name, gas).length || v.paths.broken) continue;
            const routes = v.paths.routes(v.name, gas);
            const shutting = (n: string) => ['valve', 'check-valve', 'filter', 'dryer', 'compressor', 'regulator', 'cylinder', 'balloon', 'fuel-cell'].includes(kind(n)) && !(kind(n) === 'valve' && v.other(n)!.word('if-unpowered') === 'opens' && v.other(n)!.names('shut-while').length);
            const soft = (n: string) => kind(n) === 'bubbler' && v.other(n)!.word('lid') === 'blow-off' || kind(n) === 'column' && v.other(n)!.word('lid.sort') === 'blow-off' || v.other(n)?.word('overflow') === 'outdoors';
            // A way counts as far as nothing on it can shut: to the open air, to a flame, or to a lid that blows off.
            const ways = routes.map(route => {
                const stop = route.findIndex(n => shutting(n));
                const free = stop < 0 ? route : route.slice(0, stop);
                const last = route.at(-1)!;
                const ends = stop < 0 && !['bag', 'gasometer', 'plugged'].includes(kind(last) || last);
                return { open: ends || free.some(soft), clogs: free.some(n => kind(n) === 'arrestor') };
            });
            if (ways.some(w => w.open && !w.clogs)) continue;
            const only = ways.some(w => w.open);
            const store = [...v.all('bag'), ...v.all('gasometer')].find(b => v.paths.route(v.name, b.name, gas));
            // A bag without any relief is told by its own rules.
            const stops = v.controls.stackStoppers();
            if (gas === 'hydrogen' && store && ['volume', 'pressure'].flatMap(q => v.controls.limits(stops, `${store.name}.${q}`, 'above')).length < 2) continue;
            const column = v.all('column').find(c => v.paths.mediaOf(c.name).has(gas));
            const head = v.maybeQ(`${gas}-head`);
            const other = v.maybeQ(`${gas === 'hydrogen' ? 'oxygen' : 'hydrogen'}-head`, 0);
            const depth = sealDepthAbove(head === head ? head : 0);
            const point = v.maybeQ('bubble-point');
            const fits = head === head && (point !== point || depth / 1000 * WATER_COLUMN - other < 0.5 * point);
            const name = freeName(v, gas === 'hydrogen' ? 'h2-seal' : 'o2-seal');
            const from = column?.name ?? v.name;
            const blocker = routes.flatMap(r => r.filter(n => shutting(n) || ['arrestor', 'bag', 'gasometer'].includes(kind(n))))[0];
            tell({
                at: (blocker === undefined ? undefined : v.paths.place(blocker, gas)) ?? v.paths.from(v.name, gas)[0].to.span, severity: missing(tell, only ? 'warning' : 'error'),
                message: `When ${blocker ?? 'its end'} ${only ? 'clogs' : 'shuts or is full'}, nothing lets the ${gas} out by itself: the pressure rises until gas breaks through the separators${point === point ? ` at ${show(point, 'kPa')}` : ''}.`,
                fixes: fits ? [append(v, `seal ${name} { depth: ${depth} mm }\npath ${gas}: ${from} -> ${name} -> outdoors`, `Plan a seal of ${depth} mm on the ${gas} side`)] : [],
            });
        }
    },
});
