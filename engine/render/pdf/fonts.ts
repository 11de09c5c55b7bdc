/** The two faces of one font family, as TrueType or OpenType files. Only the letters used go into the PDF. */
export interface Fonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}
