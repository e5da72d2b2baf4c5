declare module 'pdfkit/output' {
  /** Collects what a document writes; call before `end()`. */
  export function toBytes(document: PDFKit.PDFDocument): Promise<Uint8Array>;
}
