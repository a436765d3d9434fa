import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'bubbler-cannot-hold',
    family: 'gas conditioning',
    severity: 'error',
    summary: 'A brittle vessel with a tight lid stands where a flash can happen.',
    why: 'A flash in its gas space rises to about ten times the pressure, and a jar flies in splinters.',
    source: 'constant-volume pressure ratio about 8 in air and 9.6 with oxygen, from memory',
    guardsLife: true,
    on: ['bubbler', 'scrubber'],
    check(v, tell) {
        const material = v.word('body.material') ?? '';
        if (v.word('body.top') === 'open' || v.word('lid') === 'blow-off') return;
        const media = v.paths.mediaOf(v.name);
        if (!media.has('hydrogen') || !v.the('stack')) return;
        const mixed = v.the('stack')!.says('separator') === 'none';
        const flame = v.paths.after(v.name, 'hydrogen').some(n => ['burner', 'engine'].includes(v.other(n)?.kind ?? ''));
        const watched = v.all('analyser').some(a => /\.oxygen$/.test(v.controls.sensed(a) ?? '') && v.said('trips'));
        const brittle = ['glass', 'borosilicate', 'acrylic', 'PC', 'PLA'].includes(material);
        if (brittle && (mixed || flame || !watched)) {
            tell({ at: v.atSlot('body.material'), message: `${v.name} is of ${material} with a tight lid: a flash inside makes splinters of it.`, fixes: defined(setValue(v, 'lid', 'blow-off', 'Give it a lid that blows off')) });
        } else if (mixed && material) tell({ at: v.atSlot('body.material'), severity: 'warning', message: `The gas in ${v.name} is a mixture that explodes: its lid should blow off before its wall does.`, fixes: defined(setValue(v, 'lid', 'blow-off', 'Give it a lid that blows off')) });
        else if (mixed) tell.cannotCheck(v, 'body', `what a flash in ${v.name} does`);
    },
});
