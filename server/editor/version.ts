/** As in package.json; told to the client, and printed with the numbers. */
export const version = '0.1.0';
