/** What a continuous load is multiplied by (NEC 210.19, 210.20, 215.2, 215.3). */
export const continuousFactor = 1.25;
