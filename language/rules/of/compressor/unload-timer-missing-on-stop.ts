import { defineRule } from '../../define.js';

export default defineRule({
    name: 'unload-timer-missing-on-stop',
    family: 'compressor',
    severity: 'warning',
    summary: 'The unloader does not open when the compressor stops.',
    why: 'The discharge stays under pressure after each run, and the next start is against it.',
    source: 'common practice, no source',
    under: ['unloader-without-check-valve'],
    on: 'unloader',
    check(v, tell) {
        const compressor = v.all('compressor').find(c => v.paths.before(v.name, 'hydrogen').includes(c.name));
        const held = v.names('shut-while');
        if (!compressor || !held.length || v.word('if-unpowered') !== 'opens') return;
        const own = new Set([compressor.name, ...v.controls.interrupters(compressor.name).map(c => c.name)]);
        // It drops with the compressor where it hears the compressor's own contact, or a timer that follows it.
        const drops = (name: string): boolean => own.has(name) || own.has(v.other(name)?.word('follows') ?? v.other(name)?.names('follows')[0] ?? '');
        const heard = [...held, ...v.controls.involved(v.name)];
        if (heard.some(n => drops(n.split('.')[0])) || !own.size) return;
        tell({ at: v.at('shut-while'), message: `${v.name} is held shut by ${held.join(' and ')}, which goes on when ${compressor.name} stops: the next start is against the pressure that stays.`, related: [{ span: compressor.at(compressor.said('needs') ? 'needs' : undefined), message: 'what stops the compressor' }] });
    },
});
