/**
 * The parts of the library that lay out and draw, loaded when first used. Where a loader wraps what they export once
 * more, that is taken off.
 */
export async function loadLibrary() {
  const [document, layout, renderer, pictures, tables, papers] = await Promise.all([
    import('pdfmake/js/PDFDocument.js'),
    import('pdfmake/js/LayoutBuilder.js'),
    import('pdfmake/js/Renderer.js'),
    import('pdfmake/js/SVGMeasure.js'),
    import('pdfmake/js/tableLayouts.js'),
    import('pdfmake/js/standardPageSizes.js'),
  ]);
  return {
    PDFDocument: only(document),
    LayoutBuilder: only(layout),
    Renderer: only(renderer),
    SVGMeasure: only(pictures),
    papers: only(papers),
    tableLayouts: tables.tableLayouts,
  };
}

const only = <T>({ default: found }: { readonly default: T | { readonly default: T } }): T =>
  (typeof found === 'object' || typeof found === 'function') && found !== null && 'default' in found
    ? found.default
    : (found as T);
