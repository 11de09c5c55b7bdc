/** Codes of orders by the million. */
export const orderCodes = {
  'not-an-order':
    'A line is no order: a field is missing, unknown, or of another kind. Put right what is named.',
  'order-id-unsafe':
    'An order’s files are laid under its id, and this one is no safe name for a file. Take plain letters, figures and hyphens.',
  'order-id-twice': 'Two orders have one id, capitals aside. Give each its own.',
  'no-orders': 'The file holds no orders. Write one on each line, as JSON.',
  'no-store': 'The folder is no store of orders. Send some there first, or name the right folder.',
  'no-set': 'The store holds no such orders. Name one of those that are listed.',
  'set-not-named': 'The store holds several sets of orders. Say which one is meant with --set.',
  'orders-unfinished':
    'Not all orders are answered yet. Let the workers finish; where none is at work, start one, or send the orders again.',
  'chunk-set-aside':
    'Several workers began this part of the orders and none came to its end, so it was set aside. Look at the reason; sending again tries once more.',
  'chunk-damaged': 'Part of the orders in the store is not what was sent. Send the orders again.',
  'answers-damaged':
    'The answers in the store are not those of its orders: some are missing, double or unreadable. Take the named file away, and send again.',
  'server-unreachable': 'The server does not answer. See that its address is right and that it runs.',
  'server-refuses': 'The server answers, but does not do what it should. Its own words say why.',
  'credentials-on-line':
    'A password does not belong on a command line, where everybody on the machine can read it. Give a file with --creds, or set BODKIN_NATS_USER and BODKIN_NATS_PASSWORD.',
} as const;
