import { drawingAddress, drawingStyle, svgOf, svgText } from '../drawing';
import { type MarkdownEngine, metadataOf } from './markdown-engine';

/** Has images with a drawing's address show the drawing that the output brings along; any other stays an image. */
export function showDrawings(engine: MarkdownEngine): void {
  const before = engine.renderer.rules.image;
  engine.renderer.rules.image = (tokens, index, options, env, self) => {
    const address = String(tokens[index].attrGet('src') ?? '');
    const drawings = metadataOf(env).extras?.drawings;
    const drawing = address.startsWith(drawingAddress) && drawings?.[Number(address.slice(drawingAddress.length))];
    return drawing
      ? svgText(svgOf(drawing))
      : (before?.(tokens, index, options, env, self) ?? self.renderToken(tokens, index, options));
  };
}

/** The colours of the reader's theme, high contrast or not. */
export const themedDrawings = `${drawingStyle}
.kf-drawing { --kf-ink: var(--vscode-foreground); --kf-faint: var(--vscode-foreground);
  --kf-paper: var(--vscode-editor-background); --kf-fill: var(--vscode-charts-blue); margin: .3em 0; }`;
