-- What was weighed into an empty system lost nothing; 365 days as 40 CFR 82.152 and 84.102 count them.
WITH named AS (SELECT * FROM calls WHERE unit <> ''),
plates AS (
  SELECT unit, full_charge_kg, row_number() OVER (PARTITION BY unit ORDER BY started DESC, session DESC) AS nth
  FROM named WHERE full_charge_kg > 0),
fillings AS (
  SELECT unit, refrigerant, row_number() OVER (PARTITION BY unit ORDER BY started DESC, session DESC) AS nth
  FROM named WHERE refrigerant <> ''),
additions AS (
  SELECT unit, max(appliance) AS appliance, sum(added_kg) AS added_kg
  FROM named
  WHERE NOT filled AND started > {as_of} - INTERVAL '365' DAY AND started <= {as_of}
  GROUP BY unit)
SELECT a.appliance, f.refrigerant, p.full_charge_kg, a.added_kg
FROM additions a
  JOIN plates p ON p.unit = a.unit AND p.nth = 1
  JOIN fillings f ON f.unit = a.unit AND f.nth = 1
WHERE a.added_kg > 0
ORDER BY a.added_kg / p.full_charge_kg DESC, a.appliance LIMIT 200
