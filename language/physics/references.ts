/**
 * Where every law comes from, and how well that is known. Doc comments point here with [key].
 */

/** How a source is known to us. */
export type Known =
    /** its own page, abstract or table was read */
    | 'read'
    /** taken from somebody else's copy of its numbers */
    | 'second-hand'
    /** remembered, not looked up again */
    | 'from memory';

/** A source. */
export interface Reference {
    readonly authors: string;
    /** Null for undated handbooks and makers' sheets. */
    readonly year: number | null;
    readonly title: string;
    /** What we take from it. */
    readonly taken: string;
    readonly known: Known;
}

function source(authors: string, year: number | null, title: string, taken: string, known: Known): Reference {
    return { authors, year, title, taken, known };
}

/** All sources by key, in the order of the alphabet. */
export const references = {
    'api-520-1': source(
        'American Petroleum Institute', 2014,
        'API 520-1: Sizing of pressure-relieving devices',
        'area for critical flow, factor F2, discharge factor 0.975', 'second-hand',
    ),
    'asme-viii': source(
        'ASME', 2019,
        'Boiler and pressure vessel code VIII-1, UG-125',
        'pressure allowed while relieving', 'read',
    ),
    'astm-f316': source(
        'ASTM', 2003,
        'F316: Pore size of membranes by bubble point',
        'constant 2.86 of the printed formula', 'from memory',
    ),
    'balej-1985': source(
        'Balej J.', 1985,
        'Water vapour partial pressures and water activities in KOH and NaOH solutions, Int. J. Hydrogen Energy 10, '
            + '233-243',
        'vapour pressure over lye, both solutes, with its range of molality', 'second-hand',
    ),
    'battery-table': source(
        'battery makers', null,
        'Rest voltage of a flooded lead-acid battery',
        'volts against charge', 'second-hand',
    ),
    'blasius-1913': source(
        'Blasius H.', 1913,
        'Das Ähnlichkeitsgesetz bei Reibungsvorgängen in Flüssigkeiten',
        'friction factor 0.3164/Re^0.25 of smooth tubes', 'from memory',
    ),
    'caustic-handbooks': source(
        'producers of caustic potash and soda', null,
        'Caustic handbooks',
        'freezing points of strong lye, solubility of KOH', 'from memory',
    ),
    'cengel-boles': source(
        'Çengel Y. A., Boles M. A.', 2006,
        'Thermodynamics: an engineering approach, 5th edition, section 7-11',
        'work of stages with cooling between, least at equal ratios', 'second-hand',
    ),
    'churchill-chu-1975': source(
        'Churchill S. W., Chu H. H. S.', 1975,
        'Correlating equations for laminar and turbulent free convection from a vertical plate, Int. J. Heat Mass '
            + 'Transfer 18, 1323-1329',
        'both forms for an upright plate', 'second-hand',
    ),
    'churchill-chu-cylinder-1975': source(
        'Churchill S. W., Chu H. H. S.', 1975,
        'Correlating equations for laminar and turbulent free convection from a horizontal cylinder, Int. J. Heat Mass '
            + 'Transfer 18, 1049-1053',
        'lying cylinder', 'from memory',
    ),
    'codata-2018': source(
        'CODATA', 2018,
        'Recommended values of the fundamental constants',
        'F, R, Stefan-Boltzmann constant', 'from memory',
    ),
    'codata-key-values': source(
        'Cox J. D., Wagman D. D., Medvedev V. A.', 1989,
        'CODATA key values for thermodynamics',
        'enthalpy and entropy of water, hydrogen, oxygen', 'from memory',
    ),
    'crc-concentrative': source(
        'CRC Handbook of Chemistry and Physics', 2021,
        'Concentrative properties of aqueous solutions, 20 °C',
        'freezing point of weak lye', 'second-hand',
    ),
    'crc-conductivity': source(
        'CRC Handbook of Chemistry and Physics', 2010,
        'Electrical conductivity of aqueous solutions, 20 °C',
        'conductivity of lye up to 5 wt%', 'second-hand',
    ),
    'degroot-2022': source(
        'de Groot M. T., Kraakman J., Lira Garcia Barros R.', 2022,
        'Optimal operating parameters for advanced alkaline water electrolysis, Int. J. Hydrogen Energy 47, 34773-34783',
        'voltage under pressure, share of diffusion in crossover', 'read',
    ),
    'dieguez-2008': source(
        'Diéguez P. M., Ursúa A., Sanchis P. et al.', 2008,
        'Thermal performance of a commercial alkaline water electrolyzer, Int. J. Hydrogen Energy 33',
        'film coefficient of stack and separators', 'second-hand',
    ),
    'din-1343': source(
        'DIN', 1990,
        'DIN 1343: Reference conditions, normal conditions',
        '0 °C and 101.325 kPa', 'from memory',
    ),
    'dittus-boelter': source(
        'Dittus F. W., Boelter L. M. K.', 1930,
        'Heat transfer in automobile radiators of the tubular type',
        'turbulent tube, coefficient 0.023 as in McAdams', 'from memory',
    ),
    'duffie-beckman': source(
        'Duffie J., Beckman W.', null,
        'Solar engineering of thermal processes',
        'angle of the sun on a tilted face, example 1.6.1', 'from memory',
    ),
    'easwarakhanthan-1986': source(
        'Easwarakhanthan T. et al.', 1986,
        'Nonlinear minimization algorithm for determining the solar cell parameters, Int. J. Solar Energy 4',
        'single-diode form', 'from memory',
    ),
    'fritsch-butland-1984': source(
        'Fritsch F. N., Butland J.', 1984,
        'A method for constructing local monotone piecewise cubic interpolants, SIAM J. Sci. Stat. Comput. 5',
        'slopes of a monotone curve', 'from memory',
    ),
    'gannon-2020': source(
        'Gannon W. J. F., Warwick M. E. A., Dunnill C. W.', 2020,
        'Woven stainless-steel mesh as a gas separation membrane for alkaline water-splitting electrolysis, Membranes 10, '
            + '109',
        'steel cloth against composite sheet', 'read',
    ),
    'gap-2019': source(
        'authors not read', 2019,
        'Int. J. Electrochemistry 2019, 5392452',
        'best gap with free bubbles near 4 mm', 'read',
    ),
    'gillespie-2015': source(
        'Gillespie M. I.', 2015,
        'Dissertation, University of the Witwatersrand',
        'two points of an open nickel cell', 'read',
    ),
    'gilliam-2007': source(
        'Gilliam R. J., Graydon J. W., Kirk D. W., Thorpe S. J.', 2007,
        'A review of specific conductivities of potassium hydroxide solutions, Int. J. Hydrogen Energy 32, 359-364',
        'conductivity of KOH', 'second-hand',
    ),
    'hagen-poiseuille': source(
        'Hagen G., Poiseuille J.-L.', 1839,
        'Laminar flow in tubes',
        'friction factor 64/Re', 'from memory',
    ),
    'hammoudi-2012': source(
        'Hammoudi M., Henao C., Agbossou K., Dubé Y., Doumbia M. L.', 2012,
        'New multi-physics approach for modelling and design of alkaline electrolyzers, Int. J. Hydrogen Energy 37',
        'kinetics of an activated pair, for comparison', 'second-hand',
    ),
    'harmathy-1960': source(
        'Harmathy T. Z.', 1960,
        'Velocity of large drops and bubbles in media of infinite or restricted extent, AIChE J. 6, 281-288',
        'rise of bubbles, factor 1.53', 'from memory',
    ),
    'haverkort-shunt': source(
        'Haverkort J. W.', 2020,
        'Analytical treatment of shunt currents in bipolar stacks, TU Delft',
        'closed form of the equal ladder (own derivation, same parameters)', 'read',
    ),
    'haverkort-zero-gap': source(
        'Haverkort J. W. et al.', 2021,
        'Voltage losses in zero-gap alkaline water electrolysis',
        'extra resistance of pressed electrodes', 'read',
    ),
    'henry-sander': source(
        'Sander R.', 2015,
        "Compilation of Henry's law constants, Atmos. Chem. Phys. 15",
        'solubility of hydrogen and oxygen in water', 'from memory',
    ),
    'iapws-95': source(
        'IAPWS', 2018,
        'R6-95: Formulation 1995 for ordinary water',
        'values fitted for heat capacity and latent heat', 'read',
    ),
    'iapws-if97': source(
        'IAPWS', 2012,
        'R7-97: Industrial formulation 1997',
        'saturation line, region 4', 'second-hand',
    ),
    'iapws-sr6': source(
        'IAPWS', 2011,
        'SR6-08: Liquid water at 0.1 MPa',
        'viscosity and thermal conductivity', 'from memory',
    ),
    'iapws-surface-tension': source(
        'IAPWS', 2014,
        'R1-76: Surface tension of ordinary water',
        'surface tension', 'from memory',
    ),
    'ict-surface': source(
        'International Critical Tables, vol. 4', 1928,
        'Surface tension of solutions',
        'rise by hydroxide', 'from memory',
    ),
    'iec-60028': source(
        'IEC', 1925,
        'IEC 60028: Resistance for copper',
        'annealed copper 1/58 Ω·mm²/m, 0.00393/K', 'from memory',
    ),
    'iec-60228': source(
        'IEC', 2004,
        'IEC 60228: Conductors of insulated cables',
        'largest resistance of class 2 and class 5 copper', 'read',
    ),
    'iec-60364-4-43': source(
        'IEC', 2008,
        'IEC 60364-4-43: Protection against overcurrent',
        'adiabatic factor k', 'from memory',
    ),
    'iec-60364-5-52': source(
        'IEC', 2009,
        'IEC 60364-5-52: Wiring systems',
        'rough current densities', 'from memory',
    ),
    'iso-13443': source(
        'ISO', 1996,
        'ISO 13443: Standard reference conditions',
        '15 °C and 101.325 kPa', 'from memory',
    ),
    'iso-4126-1': source(
        'ISO', 2013,
        'ISO 4126-1: Safety valves',
        'factor C', 'second-hand',
    ),
    'iupac-gold': source(
        'IUPAC', 1997,
        'Compendium of chemical terminology',
        '0 °C and 1 bar as standard', 'from memory',
    ),
    'iupac-weights': source(
        'IUPAC', 2018,
        'Standard atomic weights',
        'molar masses', 'from memory',
    ),
    'jarvinen-2022': source(
        'Järvinen L. et al.', 2022,
        'Int. J. Hydrogen Energy 47, 31985-32003',
        'curve of a laboratory cell', 'read',
    ),
    'kasten-young-1989': source(
        'Kasten F., Young A.', 1989,
        'Revised optical air mass tables and approximation formula, Appl. Opt. 28, 4735-4738',
        'air mass by the height of the sun', 'from memory',
    ),
    'kays-london': source(
        'Kays W. M., London A. L.', 1984,
        'Compact heat exchangers',
        'effectiveness of counterflow and parallel flow', 'from memory',
    ),
    'kays-perkins': source(
        'Kays W. M., Perkins H. C.', 1973,
        'Forced convection, internal flow in ducts',
        'laminar annulus', 'from memory',
    ),
    'kell-1975': source(
        'Kell G. S.', 1975,
        'Density, thermal expansivity and compressibility of liquid water, J. Chem. Eng. Data 20',
        'density of water', 'second-hand',
    ),
    'kibria-1995': source(
        'Kibria M. F., Mridha M. S., Khan A. H.', 1995,
        'Electrochemical studies of a nickel electrode for the hydrogen evolution reaction, Int. J. Hydrogen Energy 20, '
            + '435-440',
        'kinetics of hydrogen on nickel', 'second-hand',
    ),
    'kibria-1996': source(
        'Kibria M. F., Mridha M. S.', 1996,
        'Electrochemical studies of the nickel electrode for the oxygen evolution reaction, Int. J. Hydrogen Energy 21',
        'kinetics of oxygen on nickel', 'second-hand',
    ),
    'kohlrausch-holborn-1916': source(
        'Kohlrausch F., Holborn L.', 1916,
        'Das Leitvermögen der Elektrolyte',
        'conductivity of NaOH and of weak KOH at 18 °C and its growth', 'from memory',
    ),
    'laliberte-2009': source(
        'Laliberté M.', 2009,
        'A model for calculating the heat capacity of aqueous solutions, with updated density and viscosity data, J. '
            + 'Chem. Eng. Data 54, 1725-1760',
        'density, viscosity, heat capacity of lye', 'second-hand',
    ),
    'leachman-2009': source(
        'Leachman J. W., Jacobsen R. T, Penoncello S. G., Lemmon E. W.', 2009,
        'Fundamental equations of state for parahydrogen, normal hydrogen, and orthohydrogen, J. Phys. Chem. Ref. Data '
            + '38, 721-748',
        'ideal heat capacity', 'from memory',
    ),
    'lebideau-2019': source(
        'Le Bideau D., Mandin P., Benbouzid M., Kim M., Sellier M.', 2019,
        'Review of necessary thermophysical properties for alkaline water electrolysis, Int. J. Hydrogen Energy 44, '
            + '4553-4569',
        'density (constants from memory) and thermal conductivity of KOH', 'second-hand',
    ),
    'lemmon-2008': source(
        'Lemmon E. W., Huber M. L., Leachman J. W.', 2008,
        'Revised standardized equation for hydrogen gas densities for fuel consumption applications, J. Res. NIST 113, '
            + '341-350',
        'compressibility of hydrogen', 'second-hand',
    ),
    'leroy-1980': source(
        'LeRoy R. L., Bowen C. T., LeRoy D. J.', 1980,
        'The thermodynamics of aqueous water electrolysis, J. Electrochem. Soc. 127, 1954-1962',
        'reversible and enthalpy voltages', 'second-hand',
    ),
    'maxwell-1873': source(
        'Maxwell J. C.', 1873,
        'A treatise on electricity and magnetism',
        'spreading resistance of a round mouth, 1/(4 r) times resistivity', 'from memory',
    ),
    'meinel-1976': source(
        'Meinel A., Meinel M.', 1976,
        'Applied solar energy',
        'clear-sky light 1353 x 0.7^(air mass^0.678), a tenth more from the sky', 'from memory',
    ),
    'nagai-2003': source(
        'Nagai N., Takeuchi M., Kimura T., Oka T.', 2003,
        'Existence of optimum space between electrodes on hydrogen production by water electrolysis, Int. J. Hydrogen '
            + 'Energy 28, 35-41',
        'an optimum gap exists', 'read',
    ),
    'nbs-tables': source(
        'Wagman D. D. et al.', 1982,
        'The NBS tables of chemical thermodynamic properties',
        'heat of solution of the hydroxides at several dilutions', 'from memory',
    ),
    'peukert-1897': source(
        'Peukert W.', 1897,
        'Über die Abhängigkeit der Kapazität von der Entladestromstärke bei Bleiakkumulatoren, Elektrotech. Z. 20',
        'time under load falls faster than the current grows', 'from memory',
    ),
    'rectifier-guide': source(
        'transformer makers', null,
        'Rectifier application guide',
        'winding current per direct current', 'second-hand',
    ),
    'ren-2022': source(
        'Ren et al.', 2022,
        'Int. J. Hydrogen Energy, 10.1016/j.ijhydene.2022.03.033',
        'suction heating of a hydrogen compressor', 'read',
    ),
    'sakas-2022': source(
        'Sakas G. et al.', 2022,
        'Int. J. Hydrogen Energy 47, 4328-4345',
        'curve of a 3 MW stack', 'second-hand',
    ),
    'sanchez-2018': source(
        'Sánchez M., Amores E., Rodríguez L., Clemente-Jul C.', 2018,
        'Semi-empirical model and experimental validation for the performance evaluation of a 15 kW alkaline water '
            + 'electrolyzer, Int. J. Hydrogen Energy 43, 20332-20345',
        'voltage, Faraday efficiency and gas purity of a 12-cell stack', 'second-hand',
    ),
    'santos-2019': source(
        'Santos et al.', 2019,
        'Int. J. Refrigeration 107, 191-201',
        'scatter of small piston compressors', 'read',
    ),
    'sapienza-2017': source(
        'Sapienza A. et al.', 2017,
        'Renewable Energy 110, 40-46',
        'water on silica gel', 'second-hand',
    ),
    'schalenbach-2016': source(
        'Schalenbach M. et al.', 2016,
        'Gas permeation through diaphragms of alkaline electrolysers, J. Electrochem. Soc. 163, F1480-F1488',
        'diffusion in the sheet a sixth of that in lye', 'read',
    ),
    sechenov: source(
        'Setschenow J., as tabled by Long and McDevit', 1952,
        'Salting out of gases',
        'solubility in lye', 'from memory',
    ),
    'seewhite-1997': source(
        'See D. M., White R. E.', 1997,
        'Temperature and concentration dependence of the specific conductivity of concentrated solutions of potassium '
            + 'hydroxide, J. Chem. Eng. Data 42, 1266-1268',
        'conductivity of KOH', 'second-hand',
    ),
    'semenov-1928': source(
        'Semenov N.', 1928,
        'Zur Theorie des Verbrennungsprozesses, Z. Phys. 48, 571-582',
        'a steady temperature ends where heat made and heat lost touch', 'from memory',
    ),
    'sha-2023': source(
        'Sha Q., Lin Z., Qi R., Song Y.', 2023,
        'J. Power Sources 233263, raw data',
        'stack voltage at very small current', 'read',
    ),
    'solubility-stolfi': source(
        'Stolfi J.', 2017,
        'Table of solubilities, ic.unicamp.br',
        'solubility of NaOH', 'read',
    ),
    'stenning-martin-1968': source(
        'Stenning A. H., Martin C. B.', 1968,
        'An analytical and experimental study of air-lift pump performance, J. Eng. Power 90, 106-110',
        'friction in a riser; measured air lifts', 'from memory',
    ),
    'stokes-1851': source(
        'Stokes G. G.', 1851,
        'On the effect of the internal friction of fluids on the motion of pendulums, Trans. Cambridge Phil. Soc. 9, 8-106',
        'slow rise of a small ball', 'from memory',
    ),
    sutherland: source(
        'Sutherland W.', 1893,
        'The viscosity of gases and molecular force',
        'viscosity of gases', 'from memory',
    ),
    'symes-2013': source(
        'Symes D., Al-Duri B., Bujalski W., Dhir A.', 2013,
        'Int. J. Low-Carbon Technologies',
        'plain metals compared', 'read',
    ),
    'textbook-rectifier': source(
        'textbook', null,
        'Averages of rectified sine waves',
        '2·√2/π and its like (arithmetic)', 'from memory',
    ),
    'timoshenko-plates': source(
        'Timoshenko S., Woinowsky-Krieger S.', 1959,
        'Theory of plates and shells',
        'bending of rectangular plates under even load', 'from memory',
    ),
    'townsend-1989': source(
        'Townsend T. U.', 1989,
        'A method for estimating the long-term performance of direct-coupled photovoltaic systems, University of Wisconsin',
        'four-parameter curve of a module', 'from memory',
    ),
    'trinke-2018': source(
        'Trinke P., Haug P. et al.', 2018,
        'J. Electrochem. Soc. 165, F502-F513',
        'share of lye mixing in crossover', 'read',
    ),
    'ulleberg-2003': source(
        'Ulleberg Ø.', 2003,
        'Modeling of advanced alkaline electrolyzers: a system simulation approach, Int. J. Hydrogen Energy 28, 21-33',
        'voltage, Faraday efficiency, heat constants of one stack', 'second-hand',
    ),
    'ursua-2012': source(
        'Ursúa A., Sanchis P.', 2012,
        'Int. J. Hydrogen Energy 37, 18598-18614',
        'curve of a commercial stack', 'second-hand',
    ),
    'us-atmosphere-1976': source(
        'NOAA, NASA, USAF', 1976,
        'U.S. Standard Atmosphere',
        'thermal conductivity and make-up of air', 'from memory',
    ),
    'vermeiren-1998': source(
        'Vermeiren P. et al.', 1998,
        'Evaluation of the Zirfon separator for use in alkaline water electrolysis, Int. J. Hydrogen Energy 23, 321-324',
        'resistance of the composite sheet', 'second-hand',
    ),
    'vogt-balzer-2005': source(
        'Vogt H., Balzer R. J.', 2005,
        'The bubble coverage of gas-evolving electrodes, Electrochim. Acta 50, 2073',
        'coverage 0.023 j^0.3', 'from memory',
    ),
    'wang-2023': source(
        'Wang et al.', 2023,
        'J. Applied Electrochemistry',
        'bare stainless anode against plated one', 'read',
    ),
    'wang-levan-2009': source(
        'Wang Y., LeVan M. D.', 2009,
        'Adsorption equilibrium of water on zeolites 5A and 13X, J. Chem. Eng. Data 54, 2839-2844',
        'water on 13X, as fitted in an open library', 'second-hand',
    ),
    'zuber-findlay-1965': source(
        'Zuber N., Findlay J. A.', 1965,
        'Average volumetric concentration in two-phase flow systems, J. Heat Transfer 87, 453-468',
        'drift balance', 'from memory',
    ),
} as const satisfies Record<string, Reference>;

/** A key of {@link references}. */
export type ReferenceKey = keyof typeof references;
