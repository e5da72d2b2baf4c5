declare module 'svg-to-pdfkit' {
  interface Options {
    readonly width: number;
    readonly height: number;
    /** Steps in which arcs are cut: 12 keeps an arc of 1 m radius within 0.0001 mm. */
    readonly precision: number;
    readonly preserveAspectRatio: string;
    readonly fontCallback: (family: string, bold: boolean) => string;
    readonly warningCallback: (warning: string) => void;
  }
  function writeSvg(document: PDFKit.PDFDocument, svg: string, x: number, y: number, options: Options): void;
  export = writeSvg;
}
