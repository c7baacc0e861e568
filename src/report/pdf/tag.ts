/** A part of the document's structure, which tells a screen reader what is a heading, a table, a formula. */
export class Tag {
  /** In reading order. */
  readonly children: (Tag | object)[] = [];
  private above: Tag | undefined;
  private isPlaced = false;

  /** The type is one of the standard structure types of ISO 32000-1, 14.8.4. */
  constructor(
    readonly type: string,
    readonly options: {
      /** What a picture or formula says. */
      readonly alt?: string;
      readonly scope?: 'Column' | 'Row';
      /** What it is a part of that no node of the layout stands for, such as a table's row. */
      readonly within?: Tag;
    } = {},
  ) {}

  /** Puts the tag, or what it is within, below another, unless it has its place already. */
  below(parent: Tag | undefined): this {
    if (parent !== this) {
      const { within } = this.options;
      this.above ??= within ? within.below(parent) : parent;
    }
    return this;
  }

  /** Content that was drawn. What has none is no part of the structure. */
  add(content: object): void {
    this.place();
    this.children.push(content);
  }

  private place(): void {
    if (!this.isPlaced && this.above) {
      this.isPlaced = true;
      this.above.add(this);
    }
  }
}
