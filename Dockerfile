# The service as one small image: built from locked packages, run as an unprivileged user; writes to /data only.
FROM mcr.microsoft.com/dotnet/sdk:10.0 AS build
WORKDIR /source
COPY global.json Directory.Build.props Directory.Packages.props .editorconfig ./
COPY src/Directory.Build.props src/BannedSymbols.txt src/
COPY src/Cablewright.Contract/*.csproj src/Cablewright.Contract/packages.lock.json src/Cablewright.Contract/
COPY src/Cablewright.Drawings/*.csproj src/Cablewright.Drawings/packages.lock.json src/Cablewright.Drawings/
COPY src/Cablewright.Engine/*.csproj src/Cablewright.Engine/packages.lock.json src/Cablewright.Engine/
COPY src/Cablewright.Reports/*.csproj src/Cablewright.Reports/packages.lock.json src/Cablewright.Reports/
COPY src/Cablewright.Storage/*.csproj src/Cablewright.Storage/packages.lock.json src/Cablewright.Storage/
COPY src/Cablewright.Vocabulary/*.csproj src/Cablewright.Vocabulary/packages.lock.json src/Cablewright.Vocabulary/
COPY src/Cablewright.Service/*.csproj src/Cablewright.Service/packages.lock.json src/Cablewright.Service/
RUN dotnet restore src/Cablewright.Service --locked-mode
COPY src src
RUN dotnet publish src/Cablewright.Service --configuration Release --no-restore --output /service && mkdir /data

FROM mcr.microsoft.com/dotnet/aspnet:10.0
WORKDIR /service
COPY --from=build /service .
COPY --from=build --chown=$APP_UID:$APP_UID /data /data
ENV ASPNETCORE_HTTP_PORTS=8080 \
    DOTNET_EnableDiagnostics=0 \
    Cablewright__Storage__SqliteFile=/data/cablewright.db
VOLUME /data
EXPOSE 8080
USER $APP_UID
ENTRYPOINT ["dotnet", "Cablewright.Service.dll"]
