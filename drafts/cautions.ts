/** Warnings, each given at the step where it matters. */
export const cautions = {
  iron: 'The iron is hot: try it on a scrap of the cloth first, keep fingers off the steam, stand it up, and unplug it when you leave it.',
  hotEdge: 'Hot iron: hold the fold with the tip of the scissors, not with your fingers.',
  rotaryCutter:
    'Close the blade of a rotary cutter each time you lay it down, and cut away from the hand that holds the ruler.',
  pins: 'Take each pin out before the needle reaches it, and count pins and needles when you stop.',
  gathers: 'Pins hide among gathers: take each out before the needle reaches it, and count them afterwards.',
  elastic:
    'Elastic must not bind: bend and lift the arm with it on. If it leaves a mark after ten minutes, use a longer piece.',
  drawstring:
    'A drawstring at the neck is for grown women only. Never make it for a child: gather the neckline for good instead.',
  buttonhole: 'Put a pin across the end of a buttonhole before you slit it, so that the blade stops there.',
} as const;
