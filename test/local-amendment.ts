/** A local amendment as a table file, invented: seven to nine conductors at so many per cent of their ampacity. */
export const localAmendment = (percent: string): string =>
  JSON.stringify({
    subject: 'bundling',
    standard: 'NEC (NFPA 70)',
    editions: ['2023'],
    table: 'local amendment 12',
    title: 'Adjustment in this town',
    conditions: ['conductors in one raceway'],
    provenance: 'ordinance of an invented town',
    basis: 'published',
    columns: ['min', 'max', 'percent', 'note'],
    rows: [['7', '9', percent, null]],
  });

/** Another as what a table file holds: the largest overcurrent devices on small conductors. */
export const smallConductorLimits = (rows: readonly unknown[]) => ({
  subject: 'small-conductors',
  standard: 'NEC (NFPA 70)',
  editions: ['2023'],
  table: 'amendment 4',
  title: 'Small conductors, Mill Creek amendment',
  conditions: [],
  provenance: 'city ordinance 4-12',
  basis: 'published',
  columns: ['size', 'material', 'maxOcpd'],
  rows,
});
