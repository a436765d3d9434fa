/** What holds for every rig of this sort, whatever its numbers. */
import { defineSection, list } from '../define.js';

export default defineSection({
    name: 'cautions', title: 'Cautions', order: 20, page: 'own', lead: 'What holds for every rig of this sort, whatever its numbers: read it before anything below.',
    make: ({ workings }) => list([
        'Hydrogen burns with a flame that is hardly seen, and takes next to no spark, from 4 % to 75 % in air. It gathers under ceilings: openings belong at the highest point, whatever sparks elsewhere.',
        'Hydrogen and oxygen must never meet in a pipe, a bag or a vessel. A mixture made by mistake is let out outdoors, never tried.',
        'Oxygen makes oil, grease, cloth and wood burn fiercely: it is led to the open air by a line of its own, clean of oil.',
        'Strong lye blinds within a minute: goggles and gloves on, water to rinse within reach. Lye or its flakes go into water, never water onto them.',
        'Mains stands behind every supply, and tens of amperes before it: whoever is not licensed for mains has it done.',
        ...(workings.livePartsOf('cylinder').length || workings.livePartsOf('compressor').length ? ['A pressure vessel holds what is stamped on it and nothing else, is tested when the law says, and is never given a gas that it was not made for.'] : []),
        'Local codes, landlord, insurer and fire service are asked before gas is made.',
    ]),
});
