/** Stands below whatever shows numbers or findings as a whole. */
export const caution = 'This is arithmetic on your description. Local codes and licensed practice decide.';
