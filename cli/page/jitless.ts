import * as z from 'zod';

// To be imported before any schema is made: the page's security policy forbids code made from text, and even asking
// whether it may be made would be reported as an attempt.
z.config({ jitless: true });
