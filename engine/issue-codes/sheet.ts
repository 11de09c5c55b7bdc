/** Codes of a drawing that is read: a written sheet walked again, or a traced piece. */
export const sheetCodes = {
  'not-svg': 'The file is no whole SVG drawing. Save it again, or take the one that was written.',
  'drawing-too-large':
    'The drawing has more parts than any pattern. Save the lines of one piece by themselves.',
  'size-unknown':
    'The drawing does not say how large it is on paper. Save it with width and height in mm, and a viewBox.',
  stretched: 'The drawing is scaled more one way than the other. Save it unstretched.',
  'drawn-otherwise':
    'The sheet uses something that may draw a line elsewhere than its numbers say. Write it again, or save it without.',
  'edited-since-written':
    'What the sheet says of itself was changed since it was written. Write it again before you trust it.',
  'metadata-missing': 'The drawing does not say what is sewn to what. Walk the sheet.svg that was written.',
  'metadata-damaged': 'What the drawing says of its seams is damaged. Write the sheet again.',
  'one-piece-only': 'The file holds one piece without its neighbours. Walk sheet.svg instead.',
  'off-page': 'A piece or a label lies off the page, or is too small to read. Write the sheet again.',
  'test-square-wrong':
    'A test square is missing, or not its size: the page is not drawn at 1:1. Do not cut from it; write it again.',
  'path-missing': 'A line that the sheet speaks of is not drawn. Put it back, or write the sheet again.',
  'path-moved':
    'A line was moved or scaled as a whole. Apply that to the line itself, or write the sheet again.',
  'path-open': 'A cutting line does not close. Close it, or write the sheet again.',
  'path-otherwise': 'A line is drawn as another kind of edge than the sheet says. Write the sheet again.',
  'path-twice': 'A line is drawn twice. Take one of them away.',
  'path-unknown': 'A line is drawn of which the sheet says nothing. Take it away, or write the sheet again.',
  'path-unreadable': 'A line is written in a way that cannot be read. Draw it again as a plain path.',
  'cutting-file-damaged':
    'A line of a piece is not in the cutting file as it was written. Do not cut by it; write it again.',
  'cutting-file-off':
    'A line or a length in the cutting file is another than in the draft. Do not cut by it; write it again.',
  'left-out':
    'Pictures, copies and other things that are no lines were left alone. Save them as lines, if they belong to the piece.',
  'outline-missing': 'The drawing has no line that could be a piece. Trace the piece as one closed line.',
  'outline-too-detailed': 'The outline is made of too many parts. Simplify it, and trace it again.',
  'outline-too-large':
    'At this scale the piece is larger than any. Look at the test square, or at --mm-per-unit.',
  'outline-too-small':
    'At this scale the outline encloses next to nothing. Look at the test square, or at --mm-per-unit.',
  'outline-closed': 'Ends that lay near each other were brought together. Nothing needs doing.',
  'other-outlines': 'There is more than one outline, and the largest was taken. Name another with --piece.',
  'which-piece': 'The drawing holds several pieces. Name one with --piece.',
  'edge-twice': 'Two edges have one name. Give each its own.',
  'notch-far': 'A notch stands nowhere near the outline and was left out. Draw it on the line.',
  'square-missing': 'There is no test square to try your scale by. Measure before you cut.',
  'sheet-too-detailed':
    'A piece has more lines and curves than any drafted here. Name a sheet.svg that was written.',
  'scale-unknown':
    'Nothing tells how large the drawing is. Draw a 50 mm “test square”, or say --mm-per-unit.',
  'scale-not-a-number': 'The mm in a unit of the drawing are a number above nothing. Write such a number.',
  'scale-from-drawing': 'Without a test square the drawing’s own size was taken. Measure before you cut.',
  'scales-differ': 'Two ways of telling the scale do not agree. Measure before you cut.',
  'square-not-square': 'The marked test square is not square. Trace it again, with the paper flat.',
} as const;
