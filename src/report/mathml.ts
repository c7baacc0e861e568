/** An element of a formula in MathML. */
export interface MathElement {
  readonly tag: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly MathElement[];
  /** The text of an element that holds no others. */
  readonly text: string;
}

const entities: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };

const unescape = (text: string): string =>
  text.replace(/&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi, (whole, hex, decimal, name) =>
    name !== undefined
      ? (entities[name] ?? whole)
      : String.fromCodePoint(Number.parseInt(hex ?? decimal, hex ? 16 : 10)),
  );

/** A formula in LaTeX as MathML elements, through the typesetter for web pages; its own wrapping and annotation fall away. */
export async function mathReader(): Promise<(latex: string) => MathElement> {
  const { default: katex } = await import('katex');
  return (latex) => {
    const markup = katex.renderToString(latex, { output: 'mathml', throwOnError: false, strict: false, trust: false });
    return readElement(markup.replace(/<annotation[\s\S]*?<\/annotation>/g, ''));
  };
}

interface Open {
  readonly tag: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: MathElement[];
  text: string;
}

/** Reads markup that is well formed, as the typesetter's always is. */
function readElement(markup: string): MathElement {
  const root: Open = { tag: 'root', attributes: new Map(), children: [], text: '' };
  const open = [root];
  for (const [, closing, tag, attributes = '', empty, text] of markup.matchAll(
    /<(\/?)([\w-]+)([^>]*?)(\/?)>|([^<]+)/g,
  )) {
    const current = open[open.length - 1];
    if (text !== undefined) {
      current.text += unescape(text);
    } else if (closing) {
      open.pop();
    } else {
      const pairs = [...attributes.matchAll(/([\w-]+)="([^"]*)"/g)].map(
        ([, name, value]) => [name, unescape(value)] as const,
      );
      const element: Open = { tag, attributes: new Map(pairs), children: [], text: '' };
      current.children.push(element);
      if (!empty) {
        open.push(element);
      }
    }
  }
  return root;
}
