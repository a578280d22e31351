declare module 'svg-to-pdfkit' {
  interface Options {
    readonly width: number
    readonly height: number
    readonly preserveAspectRatio: string
    readonly assumePt: boolean
    readonly fontCallback: (family: string, bold: boolean) => string
    readonly warningCallback: (warning: string) => void
  }
  export default function drawSvg(doc: PDFKit.PDFDocument, svg: string, x: number, y: number, options: Options): void
}
