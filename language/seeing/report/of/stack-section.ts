import { printed } from '../../palette.js';
import { sectionOf } from '../../section/layers.js';
import { sectionPicture } from '../../section/section.js';
import { defineSection } from '../define.js';

export default defineSection({
    name: 'section', title: 'The stack in section', order: 50, lead: 'The plates in which the gas is made, cut open: which of them makes which gas, and what keeps the two apart.',
    make: ({ analysis }) => {
        const s = sectionOf(analysis);
        return typeof s === 'string' ? [] : [{ is: 'picture', svg: sectionPicture(s, printed, 'report-section'), told: 'The stack, cut open.' }];
    },
});
