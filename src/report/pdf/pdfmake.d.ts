/** As much of the library as is used here; it ships no types. */
declare module 'pdfmake' {
  const pdfmake: {
    readonly virtualfs: { existsSync(name: string): boolean; writeFileSync(name: string, content: Uint8Array): void };
    setFonts(fonts: Readonly<Record<string, Readonly<Record<string, string>>>>): void;
    setUrlAccessPolicy(allow: (url: string) => boolean): void;
    setLocalAccessPolicy(allow: (path: string) => boolean): void;
    setProgressCallback(tell: ((share: number) => void) | undefined): void;
    createPdf(definition: object): { getBuffer(): Promise<Uint8Array> };
  };
  export default pdfmake;
}
declare module 'mathjax/*';
declare module '@mathjax/mathjax-newcm-font/svg.js';
