import { defineRule } from '../../define.js';

export default defineRule({
    name: 'relief-vents-indoors',
    family: 'storage',
    severity: 'error',
    summary: 'A relief valve lets its gas out into the room, or nobody says where.',
    why: 'When it opens it opens for long and in full; a room is at the lower limit of burning in minutes.',
    source: 'EIGA Doc 15 and NFPA 2 ask for a vent to a place outdoors that is safe for it, from memory',
    guardsLife: true,
    from: 'drawn',
    on: 'relief-valve',
    check(v, tell) {
        if (!v.paths.mediaOf(v.name).has('hydrogen')) return;
        const after = v.paths.after(v.name, 'hydrogen');
        const room = after.find(n => n === 'room' || v.other(n)?.word('place') === 'room');
        if (room) tell({ at: v.paths.place(room, 'hydrogen') ?? v.at(), message: `${v.name} lets its hydrogen out into the room.` });
        else if (!after.length) tell({ at: v.paths.place(v.name, 'hydrogen') ?? v.at(), message: `Where the outlet of ${v.name} leads is not drawn; without a pipe it opens into the room.` });
    },
});
