import * as z from 'zod';

/*
 * Imported before everything else where a security policy forbids code made from text: even asking whether it may be made
 * would be reported as an attempt.
 */
z.config({ jitless: true });
