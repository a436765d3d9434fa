/** What happens, in the words of the bench. */
import { duration, show } from '../units/format.js';
import type { Device, Point } from './control-lines.js';

/** A device that moved by what it senses: 'bag-full makes (bag.volume above 96 L)'. */
export function nameOfCause(names: readonly string[], device?: Device, point?: Point): string {
    if (!device || !point) return names.join(', ');
    const key = (['makes', 'breaks', 'trips', 'alarm', 'resets'] as const).find(k => (k === 'resets' ? device.resets.point : device[k]) === point);
    const does = key === 'trips' ? 'trips' : key === 'alarm' ? 'warns' : key === 'resets' ? 'may start again' : key ?? 'goes back';
    const unit = device.view.given(key ?? (device.makes ? 'makes' : device.breaks ? 'breaks' : 'trips')).facts.get('value')?.amount?.unit?.text ?? '';
    return `${device.name} ${does} (${device.senses} ${point.side} ${show(point.value, unit, 4)}${point.lasts ? ` for ${duration(point.lasts)}` : ''})`;
}
/** What a device did in consequence; nothing where it goes without saying. */
export function consequence(device: Device, on: boolean, atStart: boolean): string | undefined {
    if (atStart) return undefined;
    switch (device.kind) {
        case 'compressor':
        case 'fan':
        case 'circulation-pump':
            return `${device.name} ${on ? 'starts' : 'stops'}`;
        case 'valve':
        case 'unloader':
            return `${device.name} ${on ? 'opens' : 'shuts'}`;
        case 'trip':
        case 'analyser':
        case 'detector':
        case 'stop-button':
            return on ? `${device.name} is ready again` : `${device.name} trips`;
        case 'contactor':
        case 'relay':
        case 'solid-state-relay':
            return `${device.name} ${on ? 'pulls in' : 'drops out'}`;
        case 'timer':
            return on || device.sort === 'longest-on' ? (on ? `${device.name} closes` : `${device.name} acts: it has run too long`) : undefined;
        case 'switch':
            return `${device.name} ${on ? 'makes' : 'breaks'}`;
        default:
            return undefined;
    }
}
