import { facts, kind, quantity, rows, schedule, slot, words, yesNo } from '../define.js';

const away = (doc: string, example: string) => rows([slot('what', 'text'), 'at?', slot('distance', 'length', true)], doc, { example, neverAssumed: true });

export default kind({
    name: 'site',
    called: ['room', 'place', 'workshop', 'location'],
    doc: 'The place where the rig stands. How far a leak can go before it burns depends on it, so its distances and openings are never guessed.',
    group: 'world',
    single: true,
    always: true,
    properties: {
        place: words(['outdoors', 'open-shelter', 'shed', 'garage', 'room', 'cellar', 'attic', 'flat'], 'What sort of place it is. In the open, hydrogen is gone in seconds; under a roof it stays.', {
            neverAssumed: true,
            // A boat or caravan is lived in: the strictest of what it might be.
            called: {
                outside: 'outdoors', garden: 'outdoors', yard: 'outdoors', terrace: 'outdoors', carport: 'open-shelter', 'lean-to': 'open-shelter', balcony: 'open-shelter', barn: 'shed', hut: 'shed', greenhouse: 'shed',
                workshop: 'room', lab: 'room', classroom: 'room', basement: 'cellar', loft: 'attic', apartment: 'flat', house: 'flat', home: 'flat', boat: 'flat', houseboat: 'flat', cabin: 'flat', caravan: 'flat', van: 'flat',
            },
        }),
        'attached-to-dwelling': yesNo('It shares a wall, a roof or a door with a home.', { neverAssumed: true }),
        'people-above': yesNo('People live or sit above it.', { neverAssumed: true }),
        volume: quantity('volume', 'Volume of air in it. It sets how long a leak takes to become dangerous.', { neverAssumed: true, usual: '1 m3..5000 m3', unit: 'm3', example: '${1:25 m3}' }),
        floor: facts([[slot('size', { size: 2, of: 'length' }, true), slot('', 'area', true)]], 'Its floor: 3 x 4 m, or 12 m2.', { example: '${1:3 x 4 m}', neverAssumed: true }),
        'high-point': quantity('length', 'Height of its highest inside point. Hydrogen gathers there.', { neverAssumed: true, usual: '1.5 m..20 m', unit: 'm', example: '${1:2.5 m}' }),
        openings: rows([slot('area', 'area'), 'at', slot('height', 'length'), 'free?', slot('free', 'fraction', true)],
            'What is always open, each with its height above the floor: 0.05 m2 at 2.4 m, 0.05 m2 at 0.2 m. Air moves by itself only between a low and a high one.', {
                example: '${1:0.05 m2} at ${2:2.4 m}, ${3:0.05 m2} at ${4:0.2 m}', neverAssumed: true,
            }),
        'free-area': quantity('fraction', 'Share of each opening that mesh and louvres leave free, where the opening itself does not say: 0.05 m2 at 2.4 m free 80 %.', { assume: ['50 %', 'usual for a grille with a mesh'], usual: '10 %..100 %', positive: true }),
        pockets: yesNo('Beams, a false ceiling or shelves make pockets under the roof where gas can stay.', { neverAssumed: true }),
        'boxes-over-gas': rows([slot('vents', { words: ['vented', 'closed'] }, true), slot('', 'text')],
            'Boxes, cupboards or covers above gas parts, in which it can gather: closed relay box, vented cupboard.', { example: '${1|none,closed,vented|} ${2}', neverAssumed: true }),
        'high-zone-fittings': rows([slot('', 'text'), 'at?', slot('height', 'length', true)],
            'Lamps, sockets and other electrical things high up, with their height above the floor: lamp at 2.3 m.', { example: '${1:lamp} at ${2:2.3 m}', neverAssumed: true }),
        coldest: quantity('temperature', 'Coldest it gets there while something is filled. Lye, seals and vents may freeze.', {
            assume: ['5 °C', 'a place kept just free of frost; say yours if it freezes', '± 5 K'], usual: '-40 °C..30 °C',
        }),
        hottest: quantity('temperature', 'Hottest it gets there, sun included.', { assume: ['40 °C', 'a summer day under a sunny roof', '± 5 K'], usual: '10 °C..60 °C' }),
        temperature: quantity('temperature', 'Air temperature on an ordinary day.', { assume: ['20 °C', 'a mild day indoors', '± 8 K'], usual: '-30 °C..50 °C' }),
        latitude: quantity('angle', 'How far from the equator, north positive. With where the panels look it gives their light on a clear day.', { positive: false, usual: '-66°..66°', example: '${1:48°}' }),
        altitude: quantity('length', 'Height above the sea. The air pressure follows from it if it is not given.', {
            assume: ['0 m', 'sea level; a higher site matters from a few hundred metres up', '± 300 m'], positive: false, usual: '-50 m..4500 m', unit: 'm',
        }),
        'air-pressure': quantity('pressure', 'Pressure of the air there, above vacuum: 97 kPa. Worked out from the altitude if not given.', {
            usual: '55 kPa..106 kPa', unit: 'kPa', example: '${1:100 kPa}',
        }),
        humidity: quantity('fraction', 'Moisture of the air. Dry air lets charge gather on film and hoses.', { neverAssumed: true, usual: '5 %..100 %', positive: true, example: '${1:40 %..80 %}' }),
        sun: schedule('irradiance', 'Sunshine on the panels by the clock: 0 W/m2 at 06:00, 500 W/m2 at 12:00, 0 W/m2 at 20:00.', {
            example: '${1:0 W/m2} at ${2:06:00}, ${3:500 W/m2} at ${4:12:00}, ${5:0 W/m2} at ${6:20:00}',
        }),
        'ignition-sources': away('What can light the gas, and how far off it is: heater at 4 m. Pilot flames, switches, chargers, grinders, smokers.', '${1:heater} at ${2:4 m}'),
        'air-intakes': quantity('length', 'Distance of the nearest air intake or openable window of a building.', { neverAssumed: true, usual: '0.2 m..1000 m', unit: 'm', example: '${1:6 m}' }),
        neighbours: quantity('length', 'Distance of the nearest place where others live or stay.', { neverAssumed: true, usual: '0.5 m..5000 m', unit: 'm', example: '${1:12 m}' }),
        combustibles: away('What burns well near the rig, and how far off it is: oily rags at 2 m. Oxygen makes such things burn fiercely.', '${1:timber} at ${2:2 m}'),
        'oxygen-cylinders': away('Oxygen kept near the hydrogen, and how far off it is.', '${1|none,oxygen cylinder|}'),
        heights: rows([slot('', { part: [] }), 'at', slot('at', 'length')], 'How high parts stand above the floor: rectifier at 0.4 m. Electrics under wet parts get lye on them.', {
            example: '${1:rectifier} at ${2:0.4 m}', neverAssumed: true,
        }),
        rcd: quantity('current', 'Rated current of the residual current device in the supply; none if there is none.', { neverAssumed: true, fact: true, usual: '6 mA..500 mA', unit: 'mA', example: '${1:30 mA}' }),
        breaker: facts([[slot('', 'current')], ['curve', slot('curve', { words: ['A', 'B', 'C', 'D', 'K', 'Z'] })]], 'The breaker of the circuit it hangs on: 16 A, curve B.', {
            example: '${1:16 A}, curve ${2|B,C|}', neverAssumed: true, fact: true,
        }),
        bonded: rows([slot('', 'text')], 'Metal parts with a wire to earth, by name: frame, cylinder.', { example: '${1:frame}', neverAssumed: true }),
        'dc-earthed': words(['none', 'plus', 'minus', 'middle', 'monitored'], 'Which pole of the stack is tied to earth. With an earthed cooler or frame in the lye, current takes a second way.', {
            assume: ['none', 'nothing said'],
        }),
        lock: yesNo('It can be locked.', {}),
        sign: yesNo('A sign at the door tells what is inside.', {}),
        'eye-wash': yesNo('Water to rinse eyes stands ready. Lye blinds within a minute or so.', {}),
        goggles: yesNo('Tight goggles stand ready.', {}),
        gloves: yesNo('Gloves that stand up to lye are there.', {}),
        'face-shield': yesNo('A face shield is there, for mixing and draining.', {}),
        'fire-card': yesNo('A card tells helpers and the fire brigade what is stored and how to shut it off.', {}),
        permission: facts([[slot('', { words: ['given', 'asked', 'refused', 'yes', 'no'] }), slot('date', 'date', true)], [slot('date', 'date', true), slot('from', 'text', true)]],
            'Permission of whoever decides: given 2026-04-01, "building office". Ask them; this tool cannot answer for them.', {
                example: '${1|given,asked,refused,no|} ${2:2026-04-01}, "${3:building office}"', fact: true,
            }),
        insurer: facts([[slot('', { words: ['yes', 'no', 'asked', 'given', 'refused'] }), slot('date', 'date', true)], [slot('date', 'date', true), slot('from', 'text', true)]],
            'Whether the insurer knows of it: yes, 2026-04-01.', { example: '${1|yes,asked,no|} ${2:2026-04-01}', fact: true }),
        law: words(['EU', 'UK', 'US', 'other'], 'Whose law holds. Several limits differ; only the local authority can say what applies.', {}),
    },
    template: [
        'place: ${1|outdoors,open-shelter,shed,garage,room,cellar,attic,flat|}', 'volume: ${2:25 m3}', 'high-point: ${3:2.5 m}',
        'openings: ${4:0.05 m2} at ${5:2.4 m}, ${6:0.05 m2} at ${7:0.2 m}', 'coldest: ${8:5 °C}', 'hottest: ${9:35 °C}', 'ignition-sources: ${10|none,heater at 4 m|}',
        'rcd: ${11:30 mA}',
    ],
});
