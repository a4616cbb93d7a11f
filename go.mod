module github.com/fairmiter/fairmiter

go 1.26
