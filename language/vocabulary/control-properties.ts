import { conditions, date, facts, quantity, sensed, slot, text, threshold, words } from './define.js';
import { driven } from './driven.js';

const ifs = (reactions: readonly string[], doc: string) => words(reactions, doc, { neverAssumed: true, example: `\${1|${reactions.slice(0, 2).join(',')}|}` });

/** Properties that several control and safety devices share, so that they mean the same in each. Not a kind. */
export const controlProperties = {
    senses: sensed('What it watches: a part and a quantity with a point between them, as bag.volume.', { example: '${1:bag.volume}', none: false }),
    trips: threshold('Where it acts. Add ± for how exactly it does so, and for with a time if it waits: below 3 A for 30 s.', {
        example: '${1|above,below|} ${2}',
    }),
    alarm: threshold('Where it warns. Somebody must hear a warning; only a trip acts when nobody does.', { example: '${1|above,below|} ${2}' }),
    resets: facts([
        ['by', slot('by', { words: ['hand', 'itself'] })],
        [slot('side', { words: ['above', 'below'] }), slot('value', 'sensed')],
        ['when', slot('when', { part: [] }), 'drops?'],
    ], 'What brings it back after a trip: a hand, or itself when what it watches has come back. By itself, the cause may still be there.', {
        example: 'by ${1|hand,itself|}',
    }),
    'armed-while': conditions('It counts only while these are so, as a timer that waits for the current to settle. At other times it is blind.', {
        example: '${1:settled}',
    }),
    ...driven,
    'latched-by': conditions('What starts it. It then holds itself while its needs hold; a stop or lost power drops it, and it stays out until started again.', {
        example: '${1:start-button}',
    }),
    contact: facts([[slot('', 'current'), 'at?', slot('voltage', 'voltage', true), slot('sort', { words: ['AC', 'DC'] }, true)]],
        'What its contact may switch, as printed on it. A contact for alternating current burns on under direct current.', {
            example: '${1:2 A} at ${2:24 V DC}', fact: true,
        }),
    'switch-if-wire-breaks': ifs(['breaks', 'makes', 'nothing'], 'What those who listen to it see when its wire breaks. A life can hang on it, so it is never taken for granted.'),
    'switch-if-detached': ifs(['breaks', 'makes', 'nothing'], 'What it shows when its float, lever or string comes off.'),
    'switch-if-unpowered': ifs(['breaks', 'makes', 'stays'], 'What it shows without its own supply. Leave it out for a plain contact, which has none.'),
    'trip-if-wire-breaks': ifs(['trips', 'nothing'], 'Whether a broken wire trips it or silences it. A life can hang on it, so it is never taken for granted.'),
    'trip-if-detached': ifs(['trips', 'nothing'], 'Whether it trips when its float, lever or string comes off.'),
    'trip-if-unpowered': ifs(['trips', 'nothing'], 'Whether it trips when its own supply is lost. Leave it out for a plain contact, which has none.'),
    'coil-if-unpowered': words(['breaks', 'makes', 'stays'], 'What its contact does when its coil has no power. A latching one stays as it was.', {
        assume: ['breaks', 'a coil without power lets go'],
    }),
    'valve-if-unpowered': words(['opens', 'shuts', 'stays'], 'Where it goes without power. It decides where the gas is after a power cut, so it is never taken for granted.', {
        neverAssumed: true, example: '${1|opens,shuts|}',
    }),
    'shut-while': conditions('Power holds it shut while all of these are so; otherwise it stands open.', { example: '${1:main}' }),
    'opened-by': conditions('What opens it although it is held shut: any one of these is enough.', { example: '${1:oxygen-watch}' }),
    'open-while': conditions('Power holds it open while all of these are so; otherwise it stands shut.', { example: '${1:main}' }),
    'shut-by': conditions('What shuts it although it is held open: any one of these is enough.', { example: '${1:gas-watch}' }),
    range: facts([[slot('', 'sensed')]], 'Span over which it can be set or read, as on its plate: 2..16 bar.', { example: '${1:2..16 bar}', fact: true }),
    tolerance: quantity('fraction', 'How far it may act from the point written, where that point has no ± of its own.', {
        assume: ['5 %', 'small mechanical switches are seldom better'], usual: '0.1 %..25 %', positive: true,
    }),
    enclosure: words(['open', 'sealed-reed', 'sealed', 'IIC'], 'How its contact is kept from the gas. An open contact can spark; IIC is the equipment group that includes hydrogen.', {
        assume: ['open', 'nothing said'],
    }),
    'distance-to-gas': quantity('length', 'Distance of its contact from the nearest gas joint, bag or vent.', { neverAssumed: true, usual: '0.05 m..20 m', unit: 'm', example: '${1:1.5 m}' }),
    probe: words(['none', 'DC', 'AC'], 'For a level probe: the current that it sends through the liquid. Direct current makes gas at the probe.', {
        assume: ['none', 'no level probe is mentioned'],
    }),
    'probe-voltage': quantity('voltage', 'Voltage on a level probe.', { usual: '0.5 V..24 V', example: '${1:5 V}' }),
    reads: facts([[
        slot('', 'sensed'), 'in?', slot('gas', { words: ['air', 'nitrogen', 'hydrogen'] }, true), slot('true', 'sensed', true), slot('of', 'text', true),
    ]], 'What it showed where the right answer was known: 20.8 % in air, 0.95 % in 1.00 % test gas. Belongs in a calibration with its date.', {
        example: '${1:20.8 %} in ${2:air}', fact: true,
    }),
    calibrated: date('Day of its last calibration. A sensor drifts without showing it.', { example: '${1:2026-01-31}' }),
};

/** What relay and contactor say alike: a coil with contacts. */
export const coilProperties = {
    'latched-by': controlProperties['latched-by'],
    needs: controlProperties.needs,
    'stopped-by': controlProperties['stopped-by'],
    'if-unpowered': controlProperties['coil-if-unpowered'],
    rating: controlProperties.contact,
    enclosure: controlProperties.enclosure,
    'distance-to-gas': controlProperties['distance-to-gas'],
    'fed-from': controlProperties['fed-from'],
    place: text('Where it sits.'),
};
/** What switch and trip say alike: a contact that follows what is sensed. */
export const contactProperties = {
    tolerance: controlProperties.tolerance,
    range: controlProperties.range,
    contact: controlProperties.contact,
    enclosure: controlProperties.enclosure,
    'distance-to-gas': controlProperties['distance-to-gas'],
    probe: controlProperties.probe,
    'probe-voltage': controlProperties['probe-voltage'],
    'fed-from': controlProperties['fed-from'],
    place: text('Where it sits.'),
};
/** What a contact can be at any time, and what can happen to one that a coil moves. */
export const coilStates = ['made', 'broken', 'running', 'stopped'] as const;
export const coilEvents = ['sticks made', 'sticks broken', 'coil fails', 'wire breaks'] as const;
