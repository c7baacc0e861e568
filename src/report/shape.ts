import type { ReportShape } from '../notebook';

/** Parts that are made from the sheet's results and not from its prose. */
export type MadePart =
  | 'basis'
  | 'given'
  | 'readings'
  | 'calculation'
  | 'circuits'
  | 'takeoff'
  | 'checks'
  | 'findings'
  | 'assumptions'
  | 'not checked'
  | 'cautions'
  | 'sources'
  | 'signatures';

export interface ShapeSection {
  readonly title: string;
  readonly made?: MadePart;
  /** Headings of the sheet whose text belongs here; a front matter key of the same name does too. */
  readonly heading?: RegExp;
  /** True when a reviewer looks for it, so that its absence is told. */
  readonly expected?: true;
}

export interface Shape {
  readonly kind: string;
  /** What the sheet's opening text is called when it stands under no heading. */
  readonly opening: string;
  readonly sections: readonly ShapeSection[];
}

const made = (title: string, part: MadePart): ShapeSection => ({ title, made: part });
const written = (title: string, heading: RegExp): ShapeSection => ({ title, heading, expected: true });
const perhaps = (title: string, heading: RegExp): ShapeSection => ({ title, heading });

const closing: readonly ShapeSection[] = [
  made('What was not checked', 'not checked'),
  made('Cautions', 'cautions'),
  made('Sources', 'sources'),
  perhaps('Attachments', /^(attachments?|photos?|pictures?|drawings?)\b/i),
  made('Signatures', 'signatures'),
];

const judgement: readonly ShapeSection[] = [
  made('Checks', 'checks'),
  made('Findings', 'findings'),
  made('Assumptions', 'assumptions'),
];

/** Without a `report` key: everything that the sheet holds, and nothing that it would have to hold. */
const plainShape: Shape = {
  kind: 'Calculation report',
  opening: 'Purpose',
  sections: [
    perhaps('Purpose', /^(purpose|scope)\b/i),
    made('Basis', 'basis'),
    made('Readings', 'readings'),
    made('Given values', 'given'),
    made('Calculations', 'calculation'),
    made('Circuits', 'circuits'),
    made('Takeoff', 'takeoff'),
    ...judgement,
    perhaps('Conclusion', /^(conclusions?|result)\b/i),
    ...closing,
  ],
};

/** The papers of the trade with the sections that their readers look for. Sources: common practice, no source. */
const shapes: Readonly<Record<ReportShape, Shape>> = {
  'load memo': {
    kind: 'Load memo',
    opening: 'Purpose',
    sections: [
      written('Purpose', /^(purpose|scope)\b/i),
      made('Basis', 'basis'),
      written('Existing service', /^existing service\b/i),
      written('Existing demand', /^existing (demand|load)s?\b/i),
      written('New loads', /^(new|added|proposed) loads?\b/i),
      made('Readings', 'readings'),
      made('Given values', 'given'),
      made('Calculations', 'calculation'),
      made('Circuits', 'circuits'),
      made('Takeoff', 'takeoff'),
      written('Fault current', /^(available )?(fault|short[- ]circuit) current\b/i),
      ...judgement,
      written('Exclusions', /^(exclusions?|not included)\b/i),
      written('Conclusion', /^(conclusions?|result)\b/i),
      ...closing,
    ],
  },
  'service report': {
    kind: 'Service report',
    opening: 'Situation',
    sections: [
      written('Complaint', /^(complaint|reported fault|call)\b/i),
      written('Make-safe record', /^(make[- ]safe|isolation|lock[- ]?out)\b/i),
      written('Conditions', /^(site )?conditions?\b/i),
      perhaps('Situation', /^situation\b/i),
      made('Readings', 'readings'),
      made('Given values', 'given'),
      made('Calculations', 'calculation'),
      made('Circuits', 'circuits'),
      ...judgement,
      written('Finding', /^(finding|diagnosis|verdict)s?\b/i),
      written('Action', /^(actions?|repair|work done)\b/i),
      written('Re-test under load', /^re[- ]?test\b/i),
      written('Advice to the customer', /^(advisor(y|ies)|advice|recommendations?)\b/i),
      perhaps('Parts and time', /^(parts|materials?|time|labour|labor)\b/i),
      made('Takeoff', 'takeoff'),
      perhaps('Limits of this report', /^limits?\b/i),
      made('Basis', 'basis'),
      ...closing,
    ],
  },
  'circuit schedule': {
    kind: 'Circuit schedule',
    opening: 'Scope',
    sections: [
      perhaps('Scope', /^(purpose|scope)\b/i),
      made('Basis', 'basis'),
      made('Given values', 'given'),
      made('Schedules and calculations', 'calculation'),
      made('Circuits', 'circuits'),
      made('Takeoff', 'takeoff'),
      ...judgement,
      made('Readings', 'readings'),
      perhaps('Factors', /^factors?\b/i),
      written('Exclusions', /^(exclusions?|not included)\b/i),
      ...closing,
    ],
  },
};

export const shapeOf = (report: ReportShape | undefined): Shape => (report ? shapes[report] : plainShape);
