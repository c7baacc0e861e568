import { drawingOf, type FormulaDrawing, type Glyph } from './formula-drawing';

/** A formula as a vector picture; sizes in points. */
export interface Picture {
  /** As SVG where it holds what a drawing cannot, such as letters that the typesetter’s font lacks. */
  readonly svg: string | FormulaDrawing;
  readonly width: number;
  readonly height: number;
  /** How far it reaches below the line that text stands on. */
  readonly depth: number;
}

/** The library's parts that are used here. */
interface MathJaxParts {
  readonly mathjax: {
    document(
      text: string,
      options: object,
    ): {
      readonly adaptor: { innerHTML(node: unknown): string };
      convert(latex: string, options: { readonly display: boolean }): unknown;
    };
    asyncLoad: (file: string) => unknown;
    asyncIsSynchronous: boolean;
  };
  readonly TeX: new (options: object) => object;
  readonly SVG: new (options: object) => object;
  readonly font: unknown;
  readonly adaptor: object;
  readonly register: (adaptor: object) => void;
}

/** Sets formulas in LaTeX as vector pictures, each distinct one once. */
export class Typesetter {
  private readonly known = new Map<string, Picture>();
  private readonly glyphs = new Map<string, Glyph>();
  private readonly document: ReturnType<MathJaxParts['mathjax']['document']>;

  private constructor(
    { mathjax, TeX, SVG, font, adaptor, register }: MathJaxParts,
    private readonly pointsPerEx: number,
  ) {
    // Rare characters would be fetched; they are set in the font of the text instead.
    mathjax.asyncLoad = () => undefined;
    mathjax.asyncIsSynchronous = true;
    register(adaptor);
    this.document = mathjax.document('', {
      InputJax: new TeX({ packages: ['base', 'ams'] }),
      OutputJax: new SVG({ fontCache: 'none', fontData: font, linebreaks: { inline: false } }),
    });
  }

  static async load(pointsPerEx: number): Promise<Typesetter> {
    return new Typesetter(await loadMathJax(), pointsPerEx);
  }

  set(latex: string): Picture {
    let picture = this.known.get(latex);
    if (!picture) {
      picture = this.typeset(latex);
      this.known.set(latex, picture);
    }
    return picture;
  }

  private typeset(latex: string): Picture {
    const html = this.document.adaptor.innerHTML(this.document.convert(latex, { display: true }));
    const size = (name: string) =>
      Number(new RegExp(`\\b${name}[=:] ?"?(-?[\\d.]+)ex`).exec(html)?.[1] ?? 0) * this.pointsPerEx;
    const width = size('width');
    const height = size('height');
    const svg = html
      .slice(html.indexOf('<svg'), html.lastIndexOf('</svg>') + 6)
      .replace(
        /^<svg[^>]*?(viewBox="[^"]*")[^>]*>/,
        `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" $1>`,
      )
      .replaceAll('currentColor', '#000')
      .replace(/ data-[\w-]+="[^"]*"/g, '')
      .replace(/ font-family="serif"/g, '');
    return { svg: drawingOf(svg, this.glyphs) ?? svg, width, height, depth: -size('vertical-align') };
  }
}

/** Loads the library, which leaves its parts in a global; that is put back as it was. */
async function loadMathJax(): Promise<MathJaxParts> {
  const globals = globalThis as { MathJax?: { _?: unknown } };
  const before = globals.MathJax;
  globals.MathJax = { loader: { load: [], versionWarnings: false }, startup: { typeset: false } } as object;
  try {
    await import('mathjax/loader.js');
    await import('mathjax/core.js');
    await import('mathjax/adaptors/liteDOM.js');
    await import('mathjax/input/tex-base.js');
    await import('mathjax/input/tex/extensions/newcommand.js');
    await import('mathjax/input/tex/extensions/ams.js');
    await import('mathjax/output/svg.js');
    await import('@mathjax/mathjax-newcm-font/svg.js');
    // biome-ignore lint/suspicious/noExplicitAny: the library has no types for its assembled parts.
    loaded ??= globals.MathJax._ as any;
  } finally {
    globals.MathJax = before;
  }
  return {
    mathjax: loaded.mathjax.mathjax,
    TeX: loaded.input.tex_ts.TeX,
    SVG: loaded.output.svg_ts.SVG,
    font: loaded.output.fonts['mathjax-newcm'].svg_ts.MathJaxNewcmFont,
    adaptor: loaded.adaptors.liteAdaptor.liteAdaptor(),
    register: loaded.handlers.html_ts.RegisterHTMLHandler,
  };
}

/** What was loaded the first time; a file is run once only. */
// biome-ignore lint/suspicious/noExplicitAny: the library has no types for its assembled parts.
let loaded: any;
