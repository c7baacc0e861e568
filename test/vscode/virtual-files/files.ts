import { localAmendment } from '../../local-amendment';

const fenced = (text: string): string => `\`\`\`kft\n${text}\n\`\`\`\n`;

/** The address of a workspace that is on no disk. */
export const virtualWorkspace = 'kept-workspace:/ws';

/** What lies in it at first: sheets that use each other, rows, cases, and a table of the town. */
export const virtualFiles: Readonly<Record<string, string>> = {
  'kiln.kft.md': `# Kiln\n\nIt draws \`= flow\`.\n\n${fenced(
    'use supply from "shared/meters.kft.md"\ninput coil = 13 Ω from 5 Ω to 40 Ω "coil"\nflow = supply / coil',
  )}\n${fenced('panel = schedule "lists/rows.csv"\ntotal = sum(panel.load)\ncheck flow <= 20 A "breaker holds"')}`,
  'shared/meters.kft.md': `# Meters\n\n${fenced('supply = 208 V')}`,
  'lists/rows.csv': 'tag,load\nP1,9.2 kVA\nP2,1.5 kVA\n',
  'cases.csv': 'coil\n13\n26\n900\n',
  'town/conduit.kft.md': fenced('a = ampacity(12 AWG Cu THHN, terminals: 75 °C, bundled: 8)'),
  'town/town.kft-table.json': localAmendment('60'),
};
