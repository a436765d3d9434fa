import { kind, quantity, size, text, words } from '../define.js';
import { materialsFor } from '../materials.js';

export default kind({
    name: 'bag',
    called: ['balloon-bag', 'buffer', 'gas-bag'],
    doc: 'Slack gas bag between stack and user. Full it stretches and bursts; flat it lets the compressor draw air.',
    group: 'low side',
    on: ['hydrogen', 'oxygen'],
    ports: 'many',
    properties: {
        volume: quantity('volume', 'Volume when full and not yet stretched.', { usual: '0.2 L..5000 L', example: '${1:60 L}' }),
        size: size(2, 'Length x width as it lies flat, empty, folds drawn out. Hydrogen leaves through both layers of film.', { example: '${1:600 x 900 mm}' }),
        rating: quantity('pressure', 'Pressure that it bears. Never taken for granted.', { unit: 'kPa', neverAssumed: true, fact: true, usual: '0.1 kPa..50 kPa', example: '${1:2.5 kPa}' }),
        'own-pressure': quantity('pressure', 'Pressure in it half full, by its own weight and what lies on it.', { unit: 'kPa', assume: ['0.1 kPa', 'a light film', '± 0.05 kPa'], usual: '0 kPa..5 kPa' }),
        material: words(materialsFor('bag'), 'What its film is made of. Hydrogen leaves through thin or soft film within days.', { open: true, example: '${1:PA-laminate}' }),
        thickness: quantity('length', 'Thickness of the film. Twice as thick lets half as much hydrogen through.', { usual: '0.01 mm..3 mm', example: '${1:0.12 mm}' }),
        'dead-volume': quantity('volume', 'Volume left in it when it lies flat. The air in it dilutes the first filling.', { usual: '0.01 L..100 L', positive: false }),
        slack: quantity('volume', 'Room left between the full switch and the first stretch.', { usual: '0 L..500 L', positive: false }),
        place: text('Where it hangs or lies, in your own words. What it holds is set against the room.', { neverAssumed: true }),
        bonded: words(['yes', 'no', 'insulating-film'], 'Whether a conducting film is joined to earth; or that the film insulates. Rubbing film can spark.', {}),
    },
    events: ['bursts', 'leaks', 'pinched'],
    template: ['volume: ${1:60 L}', 'rating: ${2:2.5 kPa}', 'material: ${3:PA-laminate}', 'place: "${4:under the ridge}"'],
});
