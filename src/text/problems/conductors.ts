import { defineProblems } from './contract';

export const conductorProblems = defineProblems('Conductors', {
  'unknown-size': {
    means: 'This is not the size of a conductor.',
    why: 'Sizes run in steps of their own, and the nearest one is not taken by itself.',
    remedy: 'Write a size such as `12 AWG`, `1/0 AWG`, `250 kcmil` or `2.5 mm²`.',
    example: 'wire = 500 AWG Cu',
  },
  'size-not-listed': {
    means: 'The tables in force have no row for this size.',
    why: 'Nothing is worked out between two rows for a conductor that is not made.',
    remedy: 'Take one of the sizes that the message names, or the tables that hold this one.',
    example: 'wire = 3 mm² Cu',
  },
  'conductor-metal-missing': {
    means: 'A conductor does not say of what metal it is.',
    why: 'Aluminum has 1.6 times the resistance of copper and carries less; the metal is never assumed.',
    remedy: 'Write `Cu` or `Al`.',
    example: 'wire = 12 AWG',
  },
  'unknown-conductor-word': {
    means: 'A word behind a size is no metal, stranding or insulation type.',
    why: 'A word that is skipped could be the one that the ampacity hangs on.',
    remedy: 'Correct the spelling; completion lists the words.',
    example: 'wire = 12 AWG Cu THNH',
  },
  'contradictory-conductor-words': {
    means: 'Two words of a conductor cannot both hold.',
    why: 'Each leads to another row of the table.',
    remedy: 'Keep one of them.',
    example: 'wire = 12 AWG Cu solid stranded',
  },
  'insulation-missing': {
    means: 'A conductor does not say its insulation, and the result hangs on it.',
    why: 'The ampacity columns go by insulation: from 60 °C to 90 °C a conductor gains a third or more.',
    remedy: 'Add the type, such as `THHN`, to the conductor or as `insulation:`.',
    example: 'allowed = ampacity(12 AWG Cu)',
  },
  'bare-conductor': {
    means: 'An ampacity is asked of a bare conductor.',
    why: 'The tables in force are for insulated conductors.',
    remedy: 'Name the insulated conductor that is meant.',
    example: 'allowed = ampacity(6 AWG Cu bare)',
  },
  'contradictory-insulation': {
    means: 'The conductor and the call name different insulation types.',
    why: 'They lead to different columns.',
    remedy: 'Keep one of them.',
    example: 'allowed = ampacity(6 AWG Cu THHN, insulation: TW)',
  },
  'contradictory-material': {
    means: 'The conductor and the field `material` name different metals.',
    why: 'They lead to different rows.',
    remedy: 'Keep one of them.',
    example:
      'kiln = circuit\n  load: 17 A\n  continuous: yes\n  kind: general\n  voltage: 208 V\n  conductor: 10 AWG Cu THHN\n  material: Al',
  },
});
