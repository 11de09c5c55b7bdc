/** Codes of a sewing order that cannot be followed. */
export const sewingCodes = {
  'sewing-seam-left-out': 'No step sews this seam. Add it to a step.',
  'sewing-seam-twice': 'More than one step sews this seam. Leave it in one of them.',
  'sewing-edge-left-out': 'No step turns this hem or finished edge. Add it to a step.',
  'sewing-edge-twice': 'More than one step turns this edge. Leave it in one of them.',
  'sewing-left-out': 'Something drawn on a piece, or bought for it, is never put to use. Add it to a step.',
  'sewing-no-finish': 'A step leaves raw edges and does not say how they are kept from fraying. Say it.',
  'sewing-no-such-part':
    'A step speaks of a part that the garment has not. Take the name of one that it has.',
  'sewing-step-twice': 'Two steps have one title. Give each its own.',
  'sewing-too-early': 'A step comes before what it needs is done. Put it later.',
  'sewing-too-late': 'A step comes when its place is closed off, or its work is done. Put it earlier.',
  'sewing-against-cut': 'A seam is sewn after one that its allowance was cut to run under. Sew it first.',
  'sewing-not-pressed': 'A seam is crossed before it is pressed. Press it first.',
} as const;
