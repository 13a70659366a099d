-- What is charged where goods are shipped to, from day to day; a customer's own rate holds where no
-- place is named.
CREATE TABLE TAX_RATE (
  PLACE VARCHAR(80) NOT NULL,
  VALID_FROM DATE NOT NULL,
  VALID_UNTIL DATE,
  TAX_NAME VARCHAR(80) NOT NULL,
  RATE NUMERIC(9, 6) NOT NULL,
  ON_FREIGHT BOOLEAN NOT NULL,
  -- Items and kinds of items that are not taxed there, parted by semicolons.
  UNTAXED VARCHAR(1000) NOT NULL,
  SEAL BIGINT NOT NULL,
  CONSTRAINT PK_TAX_RATE PRIMARY KEY (PLACE, VALID_FROM),
  CONSTRAINT CK_TAX_RATE_PERIOD CHECK (VALID_UNTIL >= VALID_FROM),
  CONSTRAINT CK_TAX_RATE_RATE CHECK (RATE >= 0 AND RATE < 1)
);
