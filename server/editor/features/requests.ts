/** What our own extension asks beyond the protocol: pages, templates, a whole folder, assumptions, quantities. */
import { explain } from '../../../language/reference/explain.js';
import { assumptionRows, quantityRows } from '../../../language/reference/quantities.js';
import { templates } from '../../../language/reference/templates.js';
import { additionTo } from '../../../language/rules/fixes.js';
import { toWorkspaceEdit } from '../convert.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';
import { version } from '../serve.js';
import { namePiece, pageIn, spotAt } from '../spot.js';
import type { Fix } from '../../../language/rig/rig.js';

const requests: Feature = {
    name: 'requests',
    capabilities: () => ({}),
    register(connection, house) {
        connection.onRequest('rigwright/explain', (params: { name?: string; uri?: string; position?: { line: number; character: number } }) =>
            (params.name !== undefined ? explain(params.name) : params.uri && params.position ? explainAt(house, params.uri, params.position) : undefined) ?? null);
        connection.onRequest('rigwright/templates', () => templates);
        connection.onRequest('rigwright/checkFolder', ({ files, on }: { files: { uri: string; text: string }[]; on?: string }) => {
            for (const f of files) house.learn(f.uri, f.text);
            if (on) house.setSettings({ ...house.settings, today: on });
            const roots = new Set(files.map(f => house.rootOf(f.uri)).filter(u => house.page(u)?.sort !== 'library'));
            const counts = { files: files.length, errors: 0, warnings: 0, hints: 0 };
            const told = new Set<string>();
            for (const root of roots) {
                for (const f of house.analysis(root)?.findings ?? []) {
                    const key = `${f.rule} ${f.span.file} ${f.span.start} ${f.message}`;
                    if (told.has(key)) continue;
                    told.add(key);
                    if (f.severity === 'error') counts.errors++;
                    else if (f.severity === 'warning') counts.warnings++;
                    else counts.hints++;
                }
            }
            house.watched = roots;
            house.republish();
            return counts;
        });
        connection.onRequest('rigwright/assumptions', ({ uri }: { uri: string }) => {
            const fix = writeAssumptions(house, uri);
            return fix ? toWorkspaceEdit(fix, house) : null;
        });
        connection.onRequest('rigwright/quantities', ({ uri }: { uri: string }) => {
            const analysis = house.analysis(uri);
            return analysis ? { version, quantities: quantityRows(analysis.workings), assumptions: assumptionRows(analysis.workings) } : null;
        });
    },
};
export default requests;

function explainAt(house: House, uri: string, position: { line: number; character: number }) {
    const analysis = house.analysis(uri);
    const page = pageIn(analysis, uri) ?? house.page(uri);
    const doc = house.doc(uri);
    if (!analysis || !page || !doc) return undefined;
    const offset = doc.lines.offset(position);
    const told = analysis.findings.find(f => f.span.file === uri && f.span.start <= offset && offset <= f.span.end);
    if (told) return explain(told.rule);
    const spot = spotAt(page, offset);
    if (spot.part?.kind && spot.entry && spot.in === 'key') return explain(`${spot.part.kind.name}.${spot.entry.key}`);
    if (spot.occurrence) {
        const part = analysis.rig.parts.get(spot.occurrence.names[0]);
        const piece = namePiece(page, spot.occurrence, offset);
        if (part) return explain(piece.index > 0 ? `${part.kindWord}.${spot.occurrence.names.slice(1).join('.')}` : part.kindWord);
    }
    return (spot.word && explain(spot.word.text)) ?? (spot.part?.kind && explain(spot.part.kind.name));
}
/** Everything assumed and used, written into the blocks that stand in the text. */
export function writeAssumptions(house: House, uri: string): Fix | undefined {
    const analysis = house.analysis(uri);
    if (!analysis) return undefined;
    const byPlace = new Map<string, { span: Fix['edits'][number]['span']; text: string }>();
    for (const row of assumptionRows(analysis.workings)) {
        const [name, key] = row.name.split('.');
        const part = analysis.rig.parts.get(name);
        if (!part || part.implied) continue;
        const edit = additionTo(analysis.rig, part, key, row.value);
        if (!edit) continue;
        const place = `${edit.span.file} ${edit.span.start}`;
        const before = byPlace.get(place);
        if (!before) byPlace.set(place, edit);
        else before.text = before.text.trimEnd().endsWith('}') ? before.text : part.inside || !edit.text.startsWith(' {') ? before.text + edit.text : `${before.text.replace(/ \}$/, '')}  ${key}: ${row.value} }`;
    }
    return byPlace.size ? { title: 'Write what is assumed into the text', edits: [...byPlace.values()] } : undefined;
}
