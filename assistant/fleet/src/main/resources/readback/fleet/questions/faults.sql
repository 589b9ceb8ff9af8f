SELECT fault_found, count(*) AS calls
FROM calls WHERE fault_found <> ''
GROUP BY fault_found ORDER BY calls DESC, fault_found
