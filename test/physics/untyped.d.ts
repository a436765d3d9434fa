// Outside libraries that bring no types; only what the tests call.
declare module 'psychrolib' {
    const psychrolib: {
        readonly SI: number;
        SetUnitSystem(system: number): void;
        /** Pa, at °C */
        GetSatVapPres(temperature: number): number;
    };
    export default psychrolib;
}
